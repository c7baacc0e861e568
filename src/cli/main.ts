import { commandLine } from './command-line';
import { processConsole } from './console';

// The exit code is set and not forced, so that what is still being written to a pipe arrives whole.
commandLine(process.argv.slice(2), processConsole()).then((code) => {
  process.exitCode = code;
});
