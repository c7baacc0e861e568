export type { ObjectType, Type } from './checking/type';
export type * from './evaluation/trace';
export type * from './evaluation/value';
export * from './library';
export type * from './program';
export { parse } from './syntax/parser';
export * from './syntax/tree';
export type { UnitReader } from './syntax/unit-reader';
export type { Vocabulary } from './syntax/vocabulary';
