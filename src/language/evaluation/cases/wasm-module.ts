/**
 * WebAssembly by hand: as much of the binary format (WebAssembly Core Specification 2.0, chapter 5) as loops over columns
 * need. WebAssembly is data that the host checks before it runs it; it reaches nothing but the memory it is given.
 */

/** The part of the host's interface that is used; absent in hosts without WebAssembly. */
export interface Host {
  readonly Module: new (bytes: Uint8Array) => object;
  readonly Instance: new (module: object, imports: object) => { readonly exports: Record<string, unknown> };
  readonly Memory: new (pages: { readonly initial: number }) => { readonly buffer: ArrayBuffer };
}

declare const WebAssembly: Host | undefined;

export const host = (): Host | null => (typeof WebAssembly === 'undefined' ? null : WebAssembly);

export const pageSize = 65536;

/** Instructions, each as its bytes. Two numbers side by side (`f64x2`) are worked on at once. */
export const wasm = {
  loop: [0x03, 0x40],
  end: [0x0b],
  branchIf: (depth: number) => [0x0d, depth],
  get: (local: number) => [0x20, ...unsigned(local)],
  set: (local: number) => [0x21, ...unsigned(local)],
  tee: (local: number) => [0x22, ...unsigned(local)],
  integer: (value: number) => [0x41, ...unsigned(value)],
  addIntegers: [0x6a],
  isLess: [0x49],
  load: (offset: number) => [0xfd, 0x00, 0x03, ...unsigned(offset)],
  store: (offset: number) => [0xfd, 0x0b, 0x03, ...unsigned(offset)],
  both: (value: number) => [0xfd, 0x0c, ...new Uint8Array(Float64Array.of(value, value).buffer)],
  equal: [0xfd, 0x47],
  greater: [0xfd, 0x4a],
  and: [0xfd, 0x4e],
  or: [0xfd, 0x50],
  /** Bits of the first where the third has ones, of the second elsewhere. */
  select: [0xfd, 0x52],
  absolute: [0xfd, 0xec, 0x01],
  negate: [0xfd, 0xed, 0x01],
  squareRoot: [0xfd, 0xef, 0x01],
  add: [0xfd, 0xf0, 0x01],
  subtract: [0xfd, 0xf1, 0x01],
  multiply: [0xfd, 0xf2, 0x01],
  divide: [0xfd, 0xf3, 0x01],
  least: [0xfd, 0xf4, 0x01],
  most: [0xfd, 0xf5, 0x01],
} as const;

/** A function of two integers without a result. */
export interface WasmFunction {
  /** How many locals of two numbers it has; they are counted from 2, behind the integers. */
  readonly locals: number;
  readonly body: readonly number[];
}

/** A module that exports each function by its index. It imports its memory as `given.memory`. */
export function moduleOf(functions: readonly WasmFunction[]): Uint8Array {
  const indexes = [...functions.keys()];
  return Uint8Array.from([
    ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
    ...section(1, [[0x60, 2, 0x7f, 0x7f, 0]]),
    ...section(2, [[...text('given'), ...text('memory'), 0x02, 0x00, 0x01]]),
    ...section(
      3,
      indexes.map(() => [0]),
    ),
    ...section(
      7,
      indexes.map((index) => [...text(String(index)), 0x00, ...unsigned(index)]),
    ),
    ...section(
      10,
      functions.map(({ locals, body }) => sized([1, ...unsigned(locals), 0x7b, ...body, ...wasm.end])),
    ),
  ]);
}

const section = (id: number, items: readonly (readonly number[])[]): number[] => [
  id,
  ...sized([...unsigned(items.length), ...items.flat()]),
];

const sized = (bytes: readonly number[]): number[] => [...unsigned(bytes.length), ...bytes];

const text = (ascii: string): number[] => sized(Array.from(ascii, (letter) => letter.charCodeAt(0)));

/** LEB128, which is also right for a small signed number below 64. */
function unsigned(value: number): number[] {
  const bytes: number[] = [];
  let rest = value;
  do {
    const low = rest & 0x7f;
    rest >>>= 7;
    bytes.push(rest > 0 ? low | 0x80 : low);
  } while (rest > 0);
  return bytes;
}
