import type { Call } from '../language';

/** A call that nobody watches, for asking a trade function for a figure outside any sheet. */
export const unwatchedCall = (settings: unknown): Call => ({
  watched: false,
  shown: false,
  settings,
  given: () => true,
  step() {},
  assume() {},
  choose() {},
  table() {},
  fact() {},
});
