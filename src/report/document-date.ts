/**
 * The moment that a file is stamped with: midnight of the sheet's own date, so that the same sheet gives the same bytes
 * whenever it is written. A sheet without a date, or with one that is not `year-month-day`, gets the first of 2000.
 */
export function documentDate(date: string | undefined): Date {
  const stamp = /^\d{4}-\d{2}-\d{2}$/.test(date?.trim() ?? '') ? new Date(`${date!.trim()}T00:00:00Z`) : undefined;
  const earliest = Date.UTC(1980, 0, 1); // What a ZIP archive can hold.
  return stamp && stamp.getTime() >= earliest ? stamp : new Date(Date.UTC(2000, 0, 1));
}
