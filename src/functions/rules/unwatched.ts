import type { Call } from '../../language';

const nothing = () => undefined;

/** A call of which nobody hears: for a rule that is asked for its figure alone. */
export const unheard: Call = {
  watched: false,
  shown: false,
  settings: undefined,
  step: nothing,
  assume: nothing,
  choose: nothing,
  table: nothing,
  fact: nothing,
  given: () => false,
};

/** The same call with nobody watching: for trying candidates whose working must not be shown. */
export const unwatched = (call: Call): Call => ({
  ...unheard,
  settings: call.settings,
  given: (parameter) => call.given(parameter),
});
