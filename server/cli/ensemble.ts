import { reachDatabase } from '../database/reach.ts';
import { makeSignInLink } from '../http/tokens.ts';
import { readSettings } from '../settings.ts';
import type { Installation } from '../store/installation.ts';
import { openPostgres } from '../store/postgres.ts';
import { addresses } from '../welcome.ts';
import { readArguments, readWords, required } from './arguments.ts';
import { plainly } from './backup.ts';
import { BadInput, type Command } from './command.ts';
import { printJson } from './output.ts';

/** The installation of the settings, beside the server that runs on it or without one; with the address that its links begin with. */
async function inside(work: (installation: Installation, origin: string) => Promise<unknown>): Promise<number> {
  const settings = readSettings(process.env, []);
  const reached = await reachDatabase(settings, 'read');
  try {
    const installation = openPostgres(reached.entrances);
    try {
      await printJson(await work(installation, addresses(settings, settings.port)[0]!));
    } finally {
      await installation.close();
    }
  } finally {
    await reached.close();
  }
  return 0;
}

const list = ({ door }: Installation) => door.ensembles();

/** A new ensemble with its librarian, and a link for them. Where a run was cut off between the two, the next goes on. */
async function add(installation: Installation, name: string, librarian: string, origin: string): Promise<unknown> {
  const { door } = installation;
  const made = (await door.addEnsemble(name)) ?? (await door.ensembles()).find((one) => one.name === name)!;
  const { people } = installation.of(made.id);
  if ((await people.all()).length) throw new BadInput(`There is an ensemble called "${name}" already. Give this one another name.`);
  const person = await people.add(librarian, true);
  return { ensemble: made, librarian: { id: person.id, name: person.name }, link: await makeSignInLink(door, origin, person.id, made.id, new Date()) };
}

export const ensemble: Command = {
  name: 'ensemble',
  usage: 'list | add NAME --librarian PERSON',
  summary: 'Lists the ensembles of an installation, or adds one and prints a one-time link for its librarian; Bowline may go on running.',
  run: (args) =>
    plainly(() => {
      const { words: [what, name, ...more], options } = readWords(ensemble, args, ['librarian']);
      if (what === 'list' && name === undefined) return inside(list);
      if (what !== 'add' || !name?.trim() || more.length) throw new BadInput(`Usage: bowline ensemble ${ensemble.usage}`);
      const librarian = required(ensemble, options, 'librarian').trim();
      return inside((installation, origin) => add(installation, name.trim(), librarian, origin));
    }),
};

export const link: Command = {
  name: 'link',
  usage: 'PERSON --ensemble NAME',
  summary: 'Prints a new one-time link for somebody, such as a librarian who lost theirs; Bowline may go on running.',
  run: (args) =>
    plainly(() => {
      const { file: name, options } = readArguments(link, args, ['ensemble']);
      const wanted = required(link, options, 'ensemble');
      return inside(async (installation, origin) => {
        const found = (await installation.door.ensembles()).find((one) => one.name === wanted);
        if (!found) throw new BadInput(`There is no ensemble called "${wanted}". "bowline ensemble list" names those there are.`);
        const called = (await installation.of(found.id).people.all()).filter((person) => person.name === name);
        if (called.length !== 1) throw new BadInput(called.length ? `${called.length} people in ${wanted} are called "${name}". Their librarian makes the link on the shelf.` : `Nobody in ${wanted} is called "${name}".`);
        return { person: { id: called[0]!.id, name }, link: await makeSignInLink(installation.door, origin, called[0]!.id, found.id, new Date()) };
      });
    }),
};
