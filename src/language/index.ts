export type { ObjectType, Type } from './checking/type';
export type * from './evaluation/trace';
export type * from './evaluation/value';
export * from './library';
export type * from './program';
export { parse } from './syntax/parser';
export type { UnitReader } from './syntax/reader';
export * from './syntax/tree';
export type { Vocabulary } from './syntax/vocabulary';
