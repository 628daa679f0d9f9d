import { backup } from './backup.ts';
import { bow } from './bow.ts';
import { carry } from './carry.ts';
import { check } from './check.ts';
import { BadInput, type Command } from './command.ts';
import { ensemble, link } from './ensemble.ts';
import { finger } from './finger.ts';
import { mark } from './mark.ts';
import { notes } from './notes.ts';
import { print } from './output.ts';
import { printing } from './printing.ts';
import { restore } from './restore.ts';
import { score } from './score.ts';
import { stagger } from './stagger.ts';

const COMMANDS: readonly Command[] = [score, notes, mark, carry, check, finger, bow, stagger, printing, backup, restore, ensemble, link];

const HELP = `bowline - fingerings and bowings of a string section, on the command line

${COMMANDS.map(({ name, usage, summary }) => `  bowline ${name} ${usage}\n      ${summary}`).join('\n')}

JSON goes to the standard output, what is wrong to the standard error stream.
Exit code: 0 done, 1 findings or refused, 2 bad input or usage.
`;

async function run([name, ...args]: string[]): Promise<number> {
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    if (name === undefined) throw new BadInput(HELP.trimEnd());
    await print(HELP);
    return 0;
  }
  const command = COMMANDS.find((candidate) => candidate.name === name);
  if (!command) throw new BadInput(`There is no command "${name}". The commands are: ${COMMANDS.map((candidate) => candidate.name).join(', ')}.`);
  if (args.includes('--help') || args.includes('-h')) {
    await print(`bowline ${command.name} ${command.usage}\n    ${command.summary}\n`);
    return 0;
  }
  return command.run(args);
}

// A reader that closes its end early is dealt with where the writing is.
process.stdout.on('error', () => undefined);
try {
  process.exitCode = await run(process.argv.slice(2));
} catch (error) {
  if (!(error instanceof BadInput)) throw error;
  console.error(error.sentences.join('\n'));
  process.exitCode = 2;
}
