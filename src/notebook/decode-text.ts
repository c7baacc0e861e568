import { type Diagnostic, type ProblemCode, span } from '../text';

/** Larger files are shown in part and not evaluated. A sheet of ten thousand formulas is a tenth of this. */
const largestSheet = 4 * 1024 * 1024;

/** How much of a file that cannot be a sheet is shown. */
const shownOfBroken = 64 * 1024;

export interface DecodedText {
  /** Without the byte order mark; with replacement characters where bytes are not UTF-8. */
  readonly text: string;
  readonly byteOrderMark: boolean;
  /** Why nothing in it may be evaluated or written back as something else. */
  readonly refusal?: Diagnostic;
}

/** The text of a file, or as much of it as tells what it is, with the reason why it is no sheet. */
export function decodeText(bytes: Uint8Array): DecodedText {
  const byteOrderMark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  const content = byteOrderMark ? bytes.subarray(3) : bytes;
  const lenient = () => new TextDecoder('utf-8', { ignoreBOM: true }).decode(content.subarray(0, shownOfBroken));
  const refused = (code: ProblemCode, message: string): DecodedText => {
    const text = lenient();
    return { text, byteOrderMark, refusal: { code, severity: 'error', span: firstLine(text), message } };
  };
  if (content.length > largestSheet) {
    return refused(
      'file-too-large',
      `This file holds ${content.length} bytes; a sheet may hold ${largestSheet}. Its beginning is shown as text and ` +
        'nothing is evaluated. Part it into several sheets.',
    );
  }
  if (content.includes(0)) {
    return refused(
      'binary-file',
      'This file holds zero bytes, as programs and pictures do; a sheet is text in UTF-8. It is shown as text, not ' +
        'evaluated, and stays as it is. Open a sheet instead, or save this one as UTF-8.',
    );
  }
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(content);
  } catch {
    return refused(
      'not-utf-8',
      'This file holds bytes that are not UTF-8 text. It is shown with a replacement sign in their place, not ' +
        'evaluated, and stays as it is. Save it as UTF-8, then open it again.',
    );
  }
  const conflict = /(?<=^|\n|\r)<{7}(?=[ \n\r]|$)[^\n\r]*/.exec(text);
  if (conflict) {
    const message =
      'This file holds the marks of a merge that nobody settled (<<<<<<<). It is shown as text, not evaluated, and ' +
      'stays as it is. Settle the merge in a text editor, take the marks out, then open it again.';
    const place = span(conflict.index, conflict.index + conflict[0].length);
    return { text, byteOrderMark, refusal: { code: 'conflict-marker', severity: 'error', span: place, message } };
  }
  return { text, byteOrderMark };
}

const firstLine = (text: string) => span(0, /^[^\r\n]*/.exec(text)![0].length);
