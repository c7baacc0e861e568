import { fromBase, type PlacedDiagnostic, type SheetEvaluation, type Value } from '../core';
import { showValue } from '../display';
import type { ProblemCode } from '../text';

/** A sheet's results for other programs: one object a file. `value` is a full-precision number in `unit`. */
export function jsonReport(file: string, evaluation: SheetEvaluation): object {
  return {
    file,
    ok: evaluation.ok,
    values: Object.fromEntries([...evaluation.values].map(([name, value]) => [name, jsonValue(value)])),
    checks: evaluation.checks,
    diagnostics: evaluation.diagnostics.map(jsonDiagnostic),
  };
}

/** The same shape for a file that could not be read. */
export function jsonProblem(file: string, message: string): object {
  const diagnostic = {
    code: 'unreadable-file' satisfies ProblemCode,
    severity: 'error',
    message,
    line: 1,
    column: 1,
    endLine: 1,
    endColumn: 1,
  };
  return { file, ok: false, values: {}, checks: [], diagnostics: [diagnostic] };
}

function jsonValue(value: Value): object {
  const text = showValue(value);
  switch (value.kind) {
    case 'quantity': {
      const { base, unit, uncertainty } = value;
      const limits = uncertainty && {
        low: fromBase(uncertainty.low, unit),
        // A reading over range has no upper end, and JSON no word for that.
        ...(Number.isFinite(uncertainty.high) && { high: fromBase(uncertainty.high, unit) }),
      };
      return { kind: 'quantity', value: fromBase(base, unit), unit: unit.symbol, ...limits, text };
    }
    case 'record': {
      const fields = [...value.fields].map(([name, field]) => [name, jsonValue(field)] as const);
      return { kind: 'record', fields: Object.fromEntries(fields) };
    }
    case 'list':
      return { kind: 'list', items: value.items.map(jsonValue) };
    case 'boolean': {
      const word = value.value === 'cannot tell' ? value.value : value.value ? 'yes' : 'no';
      return { kind: 'boolean', value: word, text };
    }
    case 'object':
      return { kind: value.object.name, text };
    default:
      return { kind: value.kind, text };
  }
}

const jsonDiagnostic = ({ code, severity, message, line, column, endLine, endColumn }: PlacedDiagnostic) => ({
  code,
  severity,
  message,
  line,
  column,
  endLine,
  endColumn,
});
