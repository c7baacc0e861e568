import assert from 'node:assert/strict';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { commands, contexts, views } from '../../src/vscode/names';
import { manifest } from './english-manifest';

interface Step {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly media: { readonly svg: string; readonly altText: string };
  readonly completionEvents: readonly string[];
}

const root = join(__dirname, '..', '..');
const { contributes } = manifest;
const steps: readonly Step[] = contributes.walkthroughs[0].steps;

/** The editor's own commands that the walkthrough names; the suite in the host asks the editor whether it has them. */
const ofTheEditor: readonly string[] = JSON.parse(
  readFileSync(join(root, 'test', 'editor', 'commands-of-the-editor.json'), 'utf8'),
);
/** The editor makes a command for each view that brings it to the front. */
const known: readonly string[] = [...Object.values(commands), `${views.values}.focus`, ...ofTheEditor];

const eventsOf = (kind: string) =>
  steps.flatMap(({ completionEvents }) =>
    completionEvents.filter((event) => event.startsWith(`${kind}:`)).map((event) => event.slice(kind.length + 1)),
  );

describe('the walkthrough', () => {
  it('takes at most six steps, each with a title, words and an end', () => {
    assert.equal(contributes.walkthroughs.length, 1);
    assert.ok(steps.length >= 1 && steps.length <= 6);
    assert.equal(new Set(steps.map(({ id }) => id)).size, steps.length);
    for (const { id, title, description, completionEvents } of steps) {
      assert.ok(title.length > 0 && description.length > 40 && completionEvents.length > 0, id);
    }
  });

  it('is written in the few marks that its page draws, with a button in each step', () => {
    for (const { id, description } of steps) {
      assert.ok(!/`|(?<![*])[*](?![*])/.test(description), `${id}: marks that would be shown as they are`);
      assert.match(description, /\n\[[^\]]+\]\(command:/, id);
    }
  });

  it('begins with a new sheet and ends with a report', () => {
    assert.deepEqual(steps.at(0)?.completionEvents, [`onContext:${contexts.sheetMade}`]);
    assert.deepEqual(steps.at(-1)?.completionEvents, [`onContext:${contexts.reportWritten}`]);
  });

  it('names only commands that there are', () => {
    const offered = steps.flatMap(({ description }) =>
      [...description.matchAll(/\(command:(?:toSide:)?([^)?]+)/g)].map(([, command]) => command),
    );
    const named = [...offered, ...eventsOf('onCommand')];
    assert.deepEqual(
      named.filter((command) => !known.includes(command)),
      [],
    );
    assert.deepEqual(
      ofTheEditor.filter((command) => !named.includes(command)),
      [],
    );
  });

  it('ends its steps by events, views and states that there are', () => {
    assert.deepEqual(eventsOf('onView'), [views.values]);
    assert.deepEqual(eventsOf('onContext').sort(), Object.values(contexts).sort());
    const events = steps.flatMap(({ completionEvents }) => completionEvents);
    assert.deepEqual(
      events.filter((event) => !/^on(Command|View|Context):./.test(event)),
      [],
    );
  });

  it('has a picture for each step that is packaged, small, and told in words', () => {
    assert.match(readFileSync(join(root, '.vscodeignore'), 'utf8'), /^!media\/walkthrough\/\*\*$/m);
    for (const { media } of steps) {
      assert.ok(existsSync(join(root, media.svg)), media.svg);
      const drawing = readFileSync(join(root, media.svg), 'utf8');
      assert.ok(drawing.length < 4096 && !/<script|\bon\w+=|href/.test(drawing), media.svg);
      // The page that shows it takes no styles from it, only attributes.
      assert.ok(!/style/.test(drawing) && drawing.includes('fill="var(--vscode-'), media.svg);
      assert.ok(drawing.includes(`aria-label="${media.altText}"`), media.svg);
    }
  });
});
