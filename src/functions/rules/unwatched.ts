import type { Call } from '../../language';

const nothing = () => undefined;

/** The same call with nobody watching: for trying candidates whose working must not be shown. */
export const unwatched = (call: Call): Call => ({
  watched: false,
  shown: false,
  settings: call.settings,
  step: nothing,
  assume: nothing,
  choose: nothing,
  table: nothing,
  fact: nothing,
  given: (parameter) => call.given(parameter),
});

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
