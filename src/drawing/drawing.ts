/**
 * A drawing as data: marks on a plane, y downwards, in pixels of 1/96 inch. Each host makes of it what it can show: a
 * picture in a page, in a notebook, on paper. All it says stands in words, too, in `description`.
 */
export interface Drawing {
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

export type Mark =
  | {
      readonly shape: 'line';
      readonly from: Point;
      readonly to: Point;
      readonly ink: LineInk;
    }
  /** An area with an outline, closed. */
  | { readonly shape: 'area'; readonly points: readonly Point[]; readonly ink: AreaInk }
  /** Text that stands on its baseline. */
  | {
      readonly shape: 'text';
      readonly at: Point;
      readonly text: string;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly ink: TextInk;
    };

export type Point = readonly [x: number, y: number];

/** What a mark is, which decides how a host paints it; never told by colour alone. */
export type LineInk = 'limit' | 'mean' | 'span' | 'base';
export type AreaInk = 'band' | 'best' | 'bar';
export type TextInk = 'name' | 'figure' | 'side';
export type Ink = LineInk | AreaInk | TextInk;

/** In Markdown an image with this address, and the drawing's number behind it, stands where a drawing is to be. */
export const drawingAddress = 'kilofoot-drawing:';

/** How high letters are. */
export const letterHeight = 12;

/** About how wide a text is in a sans-serif face; rather too wide than too narrow. */
export const textWidth = (text: string): number => 0.6 * letterHeight * [...text].length;

/** A rectangle's corners. */
export const rectangle = (left: number, top: number, right: number, bottom: number): readonly Point[] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];
