/** What was asked for cannot be done as asked: shown on standard error, exit code 2. */
export class WrongCommandLine extends Error {}
