import type * as Mocha from 'mocha';

/** What the suite measured; printed at the end of the run. */
export const measured: Record<string, unknown> = {};

/** Prints the results on the host's console, each line marked so that the runner can pick it out. */
export function follow(run: Mocha.Runner): void {
  const say = (text: string) => {
    for (const line of text.split('\n')) {
      console.log(`[host-test] ${line}`);
    }
  };
  let passed = 0;
  let failed = 0;
  run.on('pass', (test) => {
    passed++;
    say(`  ok   ${test.fullTitle()} (${test.duration} ms)`);
  });
  run.on('fail', (test, error) => {
    failed++;
    const lines = String(error.stack ?? error)
      .split('\n')
      .slice(0, 6);
    say(`  FAIL ${test.fullTitle()}\n       ${lines.join('\n       ')}`);
  });
  run.on('end', () => {
    say(`report ${JSON.stringify(measured)}`);
    say(`${passed} passed, ${failed} failed`);
  });
}
