import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import { reportFormats } from '../core';
import { compareSheets } from './commands/compare';
import { evaluateFiles, type Format } from './commands/evaluate';
import { explainName } from './commands/explain';
import { explainValue } from './commands/explain-value';
import { formatFiles } from './commands/format';
import { exportReport, isReportFormat, refuseToReplace } from './commands/report';
import { runCases } from './commands/run-cases';
import type { Console } from './console';
import { checkText, sheetText } from './sheet-text';
import { WrongCommandLine } from './wrong-command-line';

/** Exit codes: 0 all well; 1 a check does not pass, an error, or a file that cannot be used; 2 a wrong command line. */
export async function commandLine(args: readonly string[], console: Console): Promise<number> {
  let code = 0;
  const program = declare(console, (result) => {
    code = result;
  });
  try {
    await program.parseAsync(args, { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof WrongCommandLine) {
      console.err(`kilofoot: ${error.message}\n`);
      return 2;
    }
    if (error instanceof CommanderError) {
      return error.exitCode === 0 ? 0 : 2;
    }
    throw error;
  }
}

function declare(console: Console, finish: (code: number) => void): Command {
  const program = new Command('kilofoot')
    .description('Evaluates electrical calculation sheets (*.kft.md).')
    .exitOverride()
    .configureOutput({ writeOut: console.out, writeErr: console.err })
    .showHelpAfterError('What there is: kilofoot --help.')
    .addHelpText(
      'after',
      '\nFILE - is standard input. Exit code 0: all well; 1: a check does not pass, an error, or a file that cannot be\n' +
        'read or written; 2: the command line is wrong.',
    );
  const files = 'sheets to read; - is standard input';

  program
    .command('run')
    .description('results with their maths, checks, findings, sources')
    .argument('<files...>', files)
    .addOption(formatOption(Object.keys(reportFormats)))
    .option('-o, --out <file>', 'write there instead of standard output')
    .option('--set <name=value>', 'give an input of the sheet another value', collectInput, new Map())
    .option('--cases <file>', 'run the sheet for each row of a CSV whose header names inputs; CSV comes out')
    .option('--progress', 'tell on standard error how far a report is; a terminal is told anyway')
    .option('--write', 'also write the results into the sheet, in a block behind each cell')
    .action(async (names: string[], options: RunOptions, command: Command) =>
      finish(await runSheets(names, options, command.getOptionValueSource('format') === 'default', console)),
    );

  program
    .command('check')
    .description('checks and findings only')
    .argument('<files...>', files)
    .addOption(formatOption([]))
    .action(async (names: string[], options: { format: Format }) =>
      finish(await evaluateFiles(names, options, console, checkText)),
    );

  program
    .command('compare')
    .description('what differs between two revisions or bids')
    .argument('<before>', 'a sheet')
    .argument('<after>', 'another')
    .addOption(formatOption([]))
    .action(async (before: string, after: string, { format }: { format: 'text' | 'json' }) =>
      finish(await compareSheets(before, after, format, console)),
    );

  program
    .command('format')
    .description('tidy layout of the cells, in place')
    .argument('<files...>', files)
    .option('--check', 'only name the files that would change')
    .action(async (names: string[], { check = false }: { check?: boolean }) =>
      finish(await formatFiles(names, check, console)),
    );

  program
    .command('explain')
    .description(
      'a function, lint, problem, table, unit or conductor; memory lists every value that was seen in no publication',
    )
    .argument('<name...>', 'such as voltage_drop, continuous-load, 310.16, kcmil, 12 AWG Cu')
    .option('--in <file>', 'a name of this sheet: the chain back to what was measured, given, read and assumed')
    .option('--budget', 'with --in: what the uncertainty of the value is made of')
    .action(async (name: string[], { in: file, budget = false }: { in?: string; budget?: boolean }) => {
      if (file === undefined && budget) {
        throw new WrongCommandLine('--budget needs --in FILE: the sheet whose value it is about.');
      }
      finish(
        file === undefined
          ? explainName(name.join(' '), console)
          : await explainValue(name.join(''), file, budget, console),
      );
    });
  return program;
}

const formatOption = (reports: readonly string[]): Option =>
  new Option('--format <format>', 'how to write it').default('text').choices(['text', 'json', ...reports]);

interface RunOptions {
  readonly format: string;
  readonly out?: string;
  readonly set: ReadonlyMap<string, string>;
  readonly cases?: string;
  readonly write?: boolean;
  readonly progress?: boolean;
}

/** `run`, in whichever of its ways the options ask for. */
async function runSheets(
  names: readonly string[],
  options: RunOptions,
  formatIsDefault: boolean,
  console: Console,
): Promise<number> {
  const { cases, format, write, ...others } = options;
  refuseToReplace([...names, ...(cases === undefined ? [] : [cases])], others.out);
  if (cases !== undefined) {
    if (!formatIsDefault || write) {
      throw new WrongCommandLine('--cases writes CSV: leave --format and --write out.');
    }
    return runCases(names, { ...others, cases }, console);
  }
  if (write && (names.includes('-') || others.set.size > 0 || isReportFormat(format))) {
    throw new WrongCommandLine(
      '--write writes what the sheets themselves come to into their files: give it file names, no --set, and no report format.',
    );
  }
  return isReportFormat(format)
    ? exportReport(names, { ...others, format }, console)
    : evaluateFiles(names, { ...others, write, format: format as Format }, console, sheetText);
}

function collectInput(given: string, before: Map<string, string>): Map<string, string> {
  const at = given.indexOf('=');
  if (at < 1 || given.slice(at + 1).trim() === '' || /[\r\n]/.test(given)) {
    throw new InvalidArgumentError('Expected name=value, such as run=85 or "run=85 ft".');
  }
  return new Map(before).set(given.slice(0, at).trim(), given.slice(at + 1));
}
