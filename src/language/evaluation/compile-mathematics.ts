import type { LibraryCall } from '../checking/meaning';
import { plainNumberType } from '../checking/types';
import type { MathematicsFunction } from '../mathematics/operation';
import type { Compiler } from './compiler';
import { KnownSite, ManySite } from './lists/list-functions';
import { Operation } from './operations';
import { TwoSite } from './sites';

/** Compiles a function of plain mathematics, whose arguments lie in `slots`. */
export function compileMathematics(
  compiler: Compiler,
  { operation }: MathematicsFunction,
  call: LibraryCall,
  slots: readonly (readonly number[])[],
  target: number,
): number {
  const { machine } = compiler;
  const slot = compiler.slotFor(1, target);
  const [x, y] = slots;
  const [first] = call.arguments;
  switch (operation.kind) {
    case 'one':
      machine.emit(Operation.One, slot, x[0], machine.addFunction(operation.compute, operation.slope));
      break;
    case 'two': {
      // A step that is not written is one of the first argument's unit.
      const { unit } = first.type.kind === 'quantity' ? first.type : plainNumberType();
      compiler.site(new TwoSite(operation, x[0], y[0] ?? compiler.constant(unit.factor), slot));
      break;
    }
    case 'known':
      compiler.site(new KnownSite(x[0], slot));
      break;
    case 'many':
      compiler.site(new ManySite(operation, x, first.type.kind === 'list', slot));
      break;
  }
  return slot;
}
