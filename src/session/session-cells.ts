import type { CellText, Vocabulary } from '../language';
import type { SheetCell } from '../notebook';
import { changedStretch, withStretch } from '../text';
import { LiveProse } from './live-prose';

/** A cell as a session sees it; `id` is the host's own. */
export interface SessionCell {
  readonly id: string;
  readonly kind: SheetCell['kind'];
  readonly text: string;
}

/** A cell with its place in the sheet, from 0, and what prose shows of the program. */
export interface PlacedCell extends SessionCell {
  readonly place: number;
  readonly live?: LiveProse;
}

/** What became of the cells with an edit. */
export interface CellsEdit {
  /** Cells that are new or read otherwise, or are of the other kind now. */
  readonly entered: readonly PlacedCell[];
  /** Cells as they were before they went, or before they entered anew. */
  readonly left: readonly PlacedCell[];
  /** True where cells came, went or moved. */
  readonly moved: boolean;
  /** The stretch of the sheet, as it is now, outside which each cell stands behind the same cell as before. */
  readonly start: number;
  readonly end: number;
}

interface Held extends PlacedCell {
  place: number;
}

/** The cells of a sheet in order. An edit goes through the stretch that it changed, and through no other cell. */
export class SessionCells {
  private held: readonly Held[] = [];
  /** The cells as they were given, each at its place. */
  private given: readonly SessionCell[] = [];
  private readonly byId = new Map<string, Held>();

  constructor(private readonly vocabulary: () => Vocabulary) {}

  get all(): readonly PlacedCell[] {
    return this.held;
  }

  get(id: string): PlacedCell | undefined {
    return this.byId.get(id);
  }

  /** The cells of the program that these make: each calculation, and each expression that prose shows. */
  get texts(): CellText[] {
    const texts: CellText[] = [];
    for (const cell of this.held) {
      if (cell.kind === 'calculation') {
        texts.push(cell);
      } else if (cell.live) {
        texts.push(...cell.live.asides);
      }
    }
    return texts;
  }

  /** Takes the cells as they are now. */
  take(cells: readonly SessionCell[]): CellsEdit {
    const { start, oldEnd, newEnd } = changedStretch(this.given, cells, isSame);
    this.given = cells.slice();
    const before = new Map(this.held.slice(start, oldEnd).map((cell) => [cell.id, cell]));
    const entered: Held[] = [];
    const stretch = cells.slice(start, newEnd).map((cell, i) => {
      const old = before.get(cell.id);
      if (old && isSame(old, cell)) {
        before.delete(cell.id);
        old.place = start + i;
        return old;
      }
      const held = this.hold(cell, start + i);
      entered.push(held);
      return held;
    });
    const left = [...before.values()];
    for (const { id } of left) {
      this.byId.delete(id);
    }
    for (const cell of entered) {
      this.byId.set(cell.id, cell);
    }
    const moved = stretch.some(({ id }, i) => this.held[start + i]?.id !== id) || oldEnd !== newEnd;
    if (start < oldEnd || start < newEnd) {
      this.held = withStretch(this.held, start, oldEnd, stretch);
    }
    if (oldEnd !== newEnd) {
      for (let place = newEnd; place < this.held.length; place++) {
        this.held[place].place = place;
      }
    }
    return { entered, left, moved, start, end: newEnd };
  }

  private hold({ id, kind, text }: SessionCell, place: number): Held {
    const live = kind === 'prose' && text.includes('`') ? new LiveProse(id, text, this.vocabulary()) : undefined;
    return { id, kind, text, place, live };
  }
}

const isSame = (a: SessionCell, b: SessionCell): boolean => a.id === b.id && a.kind === b.kind && a.text === b.text;
