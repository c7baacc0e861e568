/**
 * The one door to mathjs, which is loaded when first asked for: opening a sheet must not pay for it. It knows complex
 * numbers, special functions and symbolic algebra; units are ours.
 */
let loading: Promise<typeof import('mathjs')> | undefined;

export function loadMathjs(): Promise<typeof import('mathjs')> {
  loading ??= import('mathjs');
  return loading;
}
