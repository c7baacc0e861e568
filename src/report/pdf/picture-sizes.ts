import type { Size } from 'pdfmake/js/LayoutBuilder.js';
import type SVGMeasure from 'pdfmake/js/SVGMeasure.js';
import type { FormulaDrawing } from './formula-drawing';

/** True for a formula that is drawn by its own operators, and not as SVG. */
export const isFormulaDrawing = (picture: unknown): picture is FormulaDrawing =>
  typeof picture === 'object' && picture !== null && 'operators' in picture;

/** Tells the layout how large pictures are; a formula’s size stands beside it and need not be read out of it. */
export const pictureSizes = (library: SVGMeasure) => ({
  measureSVG: (picture: unknown): Size =>
    isFormulaDrawing(picture)
      ? { width: picture.box.height, height: picture.box.height }
      : library.measureSVG(String(picture)),
  writeDimensions: (picture: unknown, size: Size): unknown =>
    isFormulaDrawing(picture) ? picture : library.writeDimensions(String(picture), size),
});
