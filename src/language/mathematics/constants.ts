/** Names that mean a number where the sheet defines none of that name. `e` stays free. */
export const constants: ReadonlyMap<string, number> = new Map([
  ['pi', Math.PI],
  ['π', Math.PI],
]);
