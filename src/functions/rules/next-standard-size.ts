import type { Found, StandardRatingRow, Tables } from '../../tables';
import { lastBits } from './last-bits';

/** Above this ampacity, in amperes, a device may not be rounded up (NEC 240.4(B) and (C)). */
export const roundUpEndsAt = 800;

/** The smallest standard rating that carries `required` amperes (NEC 240.6(A)). */
export const smallestDeviceFor = (tables: Tables, required: number): Found<StandardRatingRow> | undefined =>
  tables.standardRatingAtLeast(required * (1 - lastBits));

/**
 * The largest standard rating for a conductor of `ampacity` amperes by the general rule: the next standard size up to
 * 800 A, none above the ampacity beyond that (NEC 240.4(B) and (C)).
 */
export const largestDeviceOn = (tables: Tables, ampacity: number): Found<StandardRatingRow> | undefined =>
  ampacity * (1 - lastBits) <= roundUpEndsAt
    ? tables.standardRatingAtLeast(ampacity * (1 - lastBits))
    : tables.standardRatingAtMost(ampacity * (1 + lastBits));
