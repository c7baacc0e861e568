import type { ReportProgress } from '../core';
import type { Console } from './console';

/** So many milliseconds pass at least between what is shown on one line. */
const pause = 100;

/**
 * Shows on standard error how far a report is: on a terminal one line that is written over and leaves no trace, elsewhere
 * a line for each tenth of the work. `finish` is to be called when it is done or failed.
 */
export function progressLine({ err, errIsTerminal, width }: Console): {
  readonly progress: ReportProgress;
  readonly finish: () => void;
} {
  let shownAt = Number.NEGATIVE_INFINITY;
  let tenths = -1;
  const onOneLine: ReportProgress = ({ doing, share }) => {
    const now = performance.now();
    if (now - shownAt >= pause) {
      shownAt = now;
      err(`\r\u001b[K${`${percent(share)} ${doing}…`.slice(0, width - 1)}`);
    }
  };
  const lineByLine: ReportProgress = ({ doing, share }) => {
    const now = Math.floor(share * 10);
    if (now > tenths) {
      tenths = now;
      err(`${percent(share)} ${doing}\n`);
    }
  };
  return {
    progress: errIsTerminal ? onOneLine : lineByLine,
    finish: () => {
      if (errIsTerminal && Number.isFinite(shownAt)) {
        err('\r\u001b[K');
      }
    },
  };
}

const percent = (share: number): string => `${String(Math.floor(share * 100)).padStart(3)} %`;
