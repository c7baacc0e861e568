/**
 * Property tests draw from a fixed seed, so that a run can be repeated and a red one means a change. `FUZZ_SEED=12`
 * draws from another, `FUZZ_SEED=random` from the clock: worth running now and then, and before a release.
 */
import fc from 'fast-check';

const wanted = process.env.FUZZ_SEED ?? '20261125';

fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: wanted === 'random' ? Date.now() : Number(wanted) });
