import { Piece, type PieceOfText } from './pieces';

/** The white space between the pieces before and at `index`, which stand on one line. */
export function gapBefore(text: string, pieces: readonly PieceOfText[], index: number): string {
  const left = pieces[index - 1];
  const right = pieces[index];
  if (right.piece === Piece.Comment || left.piece === Piece.Raw || right.piece === Piece.Raw) {
    // Comments stay where their author put them.
    return text.slice(left.end, right.start) || (right.piece === Piece.Comment ? ' ' : '');
  }
  switch (right.piece) {
    case Piece.Comma:
    case Piece.Close:
    case Piece.Colon:
    case Piece.Dot:
      return '';
    case Piece.Open:
      if (left.piece === Piece.Operand) {
        return ''; // A call: the parenthesis belongs to the name before it.
      }
      break;
    case Piece.Power:
    case Piece.Superscript:
      return powerGap(left);
    default:
  }
  switch (left.piece) {
    case Piece.Open:
    case Piece.Dot:
      return '';
    case Piece.Power:
      return powerGap(pieces[index - 2]);
    case Piece.Sign:
      // Plus and minus would run together to `+-`.
      return right.piece === Piece.Sign ? ' ' : '';
    default:
      return ' ';
  }
}

/** Powers are written tight, but behind a unit the sign would then be read as part of it. */
const powerGap = (base: PieceOfText | undefined): string => (base?.piece === Piece.Unit ? ' ' : '');
