import type { Subject } from '../subject';
import type { Table } from '../table';

/** Gives a subject's table in force. */
export type TableGetter = <Row>(subject: Subject<Row>) => Table<Row>;
