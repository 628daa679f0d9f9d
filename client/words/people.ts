import type { TrailFacts, TrailKind } from '../../core/agreement/wire/trail.ts';
import { listed } from './english.ts';

/** A row of the trail as it is told: who did it, to whom, and the names of things. */
export interface Told {
  by: string;
  /** Null where it is about nobody, or about whoever did it. */
  about: string | null;
  facts: TrailFacts;
}

const part = ({ part: name, work }: TrailFacts): string => [name, work].filter(Boolean).join(' of ');
const whose = ({ by, about }: Told): string => (about === null ? by : about);
const ways: Record<string, string> = { link: 'by link', invitation: 'by invitation', letter: 'by letter', password: 'by password', identity: 'by the house’s sign-in' };
const way = ({ way: how }: TrailFacts): string => (how ? ` ${ways[how] ?? how}` : '');

/** Who belongs to the ensemble, as what, who comes and leaves. */
export const people = {
  ensemble: 'Ensemble',
  looked: (name: string) => `${name} lies open.`,
  rename: 'call it that',
  renamed: (name: string) => `The ensemble is called ${name} now.`,
  member: 'member',
  deputy: 'deputy',
  leads: (sections: readonly string[]) => `leads ${listed(sections)}`,
  sits: (sections: readonly string[]) => listed(sections),
  deputiesIn: (programmes: readonly string[]) => (programmes.length ? `deputy in ${listed(programmes)}` : 'deputy, in no programme yet'),
  isDeputy: 'deputy: single programmes only, each until its last day',
  giveRole: 'make librarian too',
  takeRole: 'librarian no more',
  makeMember: 'make a member',
  makeDeputy: 'make a deputy',
  signOut: 'sign them out',
  signOutSure: (name: string) => `What ${name} has open here ends at once, and links handed out to them open nothing more. Lines that are not sent yet wait on their device.`,
  signedOut: (name: string, ended: number) => `${ended ? `${name} is signed out.` : `${name} was not signed in.`} They come in again by a new link or a way of their own.`,
  leaves: 'leaves the ensemble',
  leavesSure: (name: string) => `${name} leaves: their seats are free and they open nothing more. What they wrote keeps their name.`,
  yourself: 'This is you.',
  sure: 'yes, do it',
  rather: 'rather not',
  left: (name: string) => `${name} has left. Their seats are free: look at the sections. They stand under those who have left.`,
  changed: (name: string, what: string) => `${name} is ${what} now.`,
  gone: 'Who has left',
  goneOn: (day: string) => `left ${day}`,
  back: 'here again',
  isBack: (name: string) => `${name} is here again, as a member. Give them a seat in a section.`,
  over: 'You are here for single programmes, and none of them is on now. Your librarian seats you in the next.',
};

/** What is kept about a person, and an end to it. */
export const mine = {
  title: 'What is kept about me',
  what: 'Your name, your ensembles and seats, your hand, the address for letters, your sign-ins, how far you have read, and what you wrote: proposals, votes, comments, wrong notes. The librarian and your principal read who did what; your hand and your address only you.',
  fetch: 'take it along, as one file',
  erase: 'Have me erased',
  eraseWhat: 'Your name becomes “Former player” everywhere, in earlier seasons too. Hand, address, sign-ins and seats are gone; marks and votes stay, without a name. This cannot be taken back. What others typed in their own words stays, and backups made before keep your name until they are thrown away.',
  eraseOther: (name: string) => `${name} becomes “Former player” everywhere. Marks and votes stay, without a name. This cannot be taken back; backups made before keep the name until they are thrown away.`,
  type: (name: string) => `Type ${name}`,
  comments: 'what was said in comments goes too',
  do: 'erase for good',
  erased: 'Erased. The marks stay; the name is gone.',
};

/** What was done, sentence by sentence. */
export const trail = {
  title: 'What was done here',
  person: 'Who',
  kind: 'What',
  everybody: 'everybody',
  everything: 'everything',
  none: 'Nothing of that was done.',
  older: 'further back',
  library: 'Bowline',
  kinds: {
    signedIn: 'came in', signInFailed: 'did not come in', signedOut: 'went out', sessionEnded: 'sign-in ended', wayInSet: 'way in set', wayInRemoved: 'way in removed', linkMade: 'link made', linkWithdrawn: 'link withdrawn',
    personAdded: 'added', personLeft: 'left', personBack: 'came back', roleGiven: 'role given', roleTaken: 'role taken', becameMember: 'became a member', becameDeputy: 'became a deputy', dataHandedOut: 'own data taken along', erased: 'erased',
    ensembleNamed: 'ensemble named', sectionAdded: 'section added', seatingChanged: 'seating', settingsChanged: 'checker’s numbers',
    programmeAdded: 'programme added', programmeChanged: 'programme changed', partAssigned: 'part given to a section', workLaid: 'score laid', filesLaid: 'further parts', editionLaid: 'corrected edition', setKept: 'marks put by', archiveTakenIn: 'archive taken in', handedOut: 'handed out',
  } satisfies Record<TrailKind, string>,
  told: {
    signedIn: (t) => `${whose(t)} came in${way(t.facts)}.`,
    signInFailed: (t) => `Somebody tried to come in as ${whose(t)}${way(t.facts)}, and did not.`,
    signedOut: (t) => `${whose(t)} went out.`,
    sessionEnded: (t) => (t.about === null ? `${t.by} ended one of their sign-ins.` : `${t.by} ended a sign-in of ${t.about}.`),
    wayInSet: (t) => `${whose(t)} set a way in${way(t.facts)}.`,
    wayInRemoved: (t) => `${whose(t)} removed a way in${way(t.facts)}.`,
    linkMade: (t) => `${t.by} made a sign-in link${t.about === null ? '' : ` for ${t.about}`}.`,
    linkWithdrawn: (t) => `${t.by} withdrew a link${t.about === null ? '' : ` of ${t.about}`}.`,
    personAdded: (t) => `${t.by} added ${t.about}.`,
    personLeft: (t) => `${t.about ?? t.by} left the ensemble${t.about === null ? '' : `; ${t.by} said so`}.`,
    personBack: (t) => `${t.by} let ${t.about} in again.`,
    roleGiven: (t) => `${t.by} made ${t.about ?? t.by} a librarian.`,
    roleTaken: (t) => `${t.about ?? t.by} is a librarian no more; ${t.by} said so.`,
    becameMember: (t) => `${t.by} made ${t.about} a member.`,
    becameDeputy: (t) => `${t.by} made ${t.about} a deputy.`,
    dataHandedOut: (t) => `${whose(t)} took along what is kept about them.`,
    erased: (t) => (t.about === null ? 'A former player had themselves erased.' : `${t.by} erased somebody who had left.`),
    ensembleNamed: (t) => `${t.by} called the ensemble ${t.facts.name}.`,
    sectionAdded: (t) => `${t.by} added the section ${t.facts.section}.`,
    seatingChanged: (t) => `${t.by} seated ${t.facts.section}${t.facts.programme ? ` for ${t.facts.programme}` : ''}.`,
    settingsChanged: (t) => `${t.by} changed the checker’s numbers for ${t.facts.section}.`,
    programmeAdded: (t) => `${t.by} added the programme ${t.facts.programme}.`,
    programmeChanged: (t) => `${t.by} changed the programme ${t.facts.programme}.`,
    partAssigned: (t) => (t.facts.section ? `${t.by} gave ${part(t.facts)} to ${t.facts.section}.` : `${t.by} took ${part(t.facts)} off its stands.`),
    workLaid: (t) => `${t.by} laid ${t.facts.work} on the shelf.`,
    filesLaid: (t) => `${t.by} added parts to ${t.facts.work}.`,
    editionLaid: (t) => `${t.by} laid a corrected edition over ${t.facts.work}.`,
    setKept: (t) => `${t.by} put the marks of ${t.facts.work} by.`,
    archiveTakenIn: (t) => `${t.by} took ${t.facts.work} into the archive.`,
    handedOut: (t) => (t.facts.what === 'archive' ? `${t.by} took the archive along.` : `${t.by} was handed ${part(t.facts)} (${t.facts.what}).`),
  } satisfies Record<TrailKind, (told: Told) => string>,
};
