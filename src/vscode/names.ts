/** The ids that `package.json` declares; a test holds them equal. */
export const notebookType = 'kilofoot-sheet';
export const languageId = 'kilofoot';
export const commands = {
  newSheet: 'kilofoot.newSheet',
  refresh: 'kilofoot.refresh',
  showCautions: 'kilofoot.showCautions',
  exportReport: 'kilofoot.exportReport',
  writeResults: 'kilofoot.writeResults',
  copyResult: 'kilofoot.copyResult',
  changeInput: 'kilofoot.changeInput',
  runCases: 'kilofoot.runCases',
  pasteAsSchedule: 'kilofoot.pasteAsSchedule',
  showWhy: 'kilofoot.showWhy',
  showSheet: 'kilofoot.showSheet',
  explain: 'kilofoot.explain',
} as const;
export const views = {
  values: 'kilofoot.values',
  /** Set while a sheet is in front, as a notebook or as text; what asks for one is offered then. */
  sheetInFront: 'kilofoot.sheetInFront',
} as const;
export const schemes = {
  /** Pages that tell the chain behind a value, and the language that they are in. */
  why: 'kilofoot-why',
  /** Reference pages of functions, lints and problems. */
  page: 'kilofoot-page',
} as const;
/** Set for a moment when a step of the walkthrough is done. */
export const contexts = {
  sheetMade: 'kilofoot.sheetMade',
  sheetEdited: 'kilofoot.sheetEdited',
  sourceShown: 'kilofoot.sourceShown',
  sheetSaved: 'kilofoot.sheetSaved',
  reportWritten: 'kilofoot.reportWritten',
} as const;
export const settings = {
  section: 'kilofoot',
  refresh: 'refreshAutomatically',
  lineEnds: 'resultsAtLineEnds',
  severities: 'severities',
} as const;

/** Where a prose cell carries its values to the renderer. Declared transient: never saved, and no reason to be dirty. */
export const transientCellMetadata = { live: true };
