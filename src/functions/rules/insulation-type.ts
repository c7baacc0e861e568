import { Failure } from '../../language';
import type { Conductor } from '../conductor';
import { conductorText } from '../conductor';

/**
 * The insulation that an ampacity is to be taken for: the conductor's own, or the one that the call names. It is never
 * guessed, because the ampacity hangs on it.
 */
export function insulationType(conductor: Conductor, named: string | undefined): string | Failure {
  if (conductor.bare) {
    return new Failure(
      `${conductorText(conductor)} is bare, and the ampacity table holds for insulated conductors only.`,
      'conductor',
      'bare-conductor',
    );
  }
  if (conductor.insulation && named && conductor.insulation !== named) {
    return new Failure(
      `The conductor says ${conductor.insulation}, the call says ${named}: keep one of them.`,
      'insulation',
      'contradictory-insulation',
    );
  }
  return (
    conductor.insulation ??
    named ??
    new Failure(
      `${conductorText(conductor)} does not say its insulation, and its ampacity hangs on that. Add it, such as ${conductorText({ ...conductor, insulation: 'THHN' })}.`,
      'conductor',
      'insulation-missing',
    )
  );
}
