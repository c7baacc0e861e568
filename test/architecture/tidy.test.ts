import assert from 'node:assert/strict';
import { filesBelow, textOf } from './source-files';

const sources = filesBelow('src', '.ts');
const tests = filesBelow('test', '.ts').filter((file) => !file.startsWith('test/architecture/'));
const core = sources.filter((file) => !/^src\/(cli|vscode|dev)\//.test(file));

/** Lines of files that match, as `file:line text`, so that a failure shows the place. */
function linesThat(files: readonly string[], match: RegExp): string[] {
  return files.flatMap((file) =>
    textOf(file)
      .split('\n')
      .flatMap((line, i) => (match.test(line) ? [`${file}:${i + 1} ${line.trim()}`] : [])),
  );
}

describe('the tree is tidy', () => {
  it('no source file comes near 400 lines', () => {
    const long = [...sources, ...tests].filter((file) => textOf(file).split('\n').length > 380);
    assert.deepEqual(long, []);
  });

  it('nothing that was made from a source file lies beside it', () => {
    assert.deepEqual([...filesBelow('src', '.js'), ...filesBelow('test', '.js')], []);
  });

  it('no file is named by what it is not', () => {
    const vague = [...sources, ...tests].filter((file) =>
      /(^|\/)(utils?|helpers?|common|manager|misc)(\/|\.|-)/.test(file),
    );
    assert.deepEqual(vague, []);
  });

  it('file names are kebab-case, or the snake_case name of the function they define', () => {
    const odd = sources.filter((file) => !/^[a-z0-9-]+(\.d)?\.ts$/.test(file.split('/').at(-1)!));
    assert.deepEqual(
      odd.filter((file) => !/^src\/functions\/([a-z-]+\/)?[a-z_]+\.ts$/.test(file)),
      [],
    );
  });

  it('nothing builds code from text or silences the compiler', () => {
    assert.deepEqual(linesThat(sources, /\beval\(|new Function\(|@ts-ignore|@ts-nocheck|@ts-expect-error/), []);
  });

  it('no test is switched off or singled out', () => {
    assert.deepEqual(linesThat(tests, /\b(describe|it|test|suite)\.(only|skip)\b|\bthis\.skip\(/), []);
  });

  it('core neither prints nor fetches', () => {
    assert.deepEqual(linesThat(core, /\bconsole\.|\bfetch\(|\bXMLHttpRequest\b|\bprocess\./), []);
  });

  it('only display/ rounds for people', () => {
    // Reasons and messages of trade functions are sentences with figures in them, made where the figures are.
    const sentences = 'src/text/figure.ts';
    const others = core.filter((file) => !file.startsWith('src/display/') && file !== sentences);
    assert.deepEqual(linesThat(others, /\.toFixed\(|\.toPrecision\(/), []);
  });

  it('the language knows no trade', () => {
    const language = sources.filter((file) => file.startsWith('src/language/'));
    assert.deepEqual(
      linesThat(language, /\bNEC\b|NFPA|ampacity|\bTHHN\b.*['"`]/i).filter(
        (line) => !/^\S+ (\*|\/\/|\/\*\*)/.test(line),
      ),
      [],
    );
  });

  it('no file tells of the machine it was written on', () => {
    const all = [...sources, ...tests, ...filesBelow('examples'), ...filesBelow('seeds'), 'README.md', 'DEVELOPERS.md'];
    assert.deepEqual(linesThat(all, /(^|[^\w.])\/(work|tmp|home)\//), []);
  });

  it('the lock file records no download addresses', () => {
    assert.deepEqual(linesThat(['package-lock.json'], /"resolved": *"http/), []);
  });
});
