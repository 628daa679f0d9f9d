import type { LetterLanguage } from '../../core/agreement/wire/signIn.ts';
import type { Deps } from '../http/deps.ts';
import type { LetterTo } from '../store/ways.ts';
import { SIGN_IN_WORDS, type Change } from './signInWords.ts';

type Office = Pick<Deps, 'post' | 'address' | 'door' | 'log'>;

interface Written {
  subject: string;
  text: string;
}

const paragraphs = (...all: string[]): string => `${all.join('\n\n')}\n`;

/** A link that signs in once. */
export function linkLetter(language: LetterLanguage, name: string, link: string, minutes: number): Written {
  const says = SIGN_IN_WORDS[language];
  return { subject: says.link.subject, text: paragraphs(says.greeting(name), says.link.text(minutes), link, says.link.notYou) };
}

/** Somebody new is invited. */
export function invitationLetter(language: LetterLanguage, name: string, ensemble: string, link: string, days: number): Written {
  const says = SIGN_IN_WORDS[language];
  return { subject: says.invitation.subject(ensemble), text: paragraphs(says.greeting(name), says.invitation.text(ensemble, days), link, says.invitation.notYou) };
}

/** Whether an address is its owner's. */
export function claimLetter(language: LetterLanguage, name: string, link: string, hours: number): Written {
  const says = SIGN_IN_WORDS[language];
  return { subject: says.claim.subject, text: paragraphs(says.greeting(name), says.claim.text(hours), link, says.claim.notYou) };
}

/** Tells somebody that how they sign in was changed, where a letter can reach them. Nobody waits for it; it is not tried again. */
export async function tellOfChange({ post, address, door, log }: Office, person: { id: string; name: string }, change: Change, to?: LetterTo | null): Promise<void> {
  if (!post) return;
  try {
    const own = to === undefined ? await door.address(person.id).then((found) => (found?.confirmed ? found : null)) : to;
    if (!own) return;
    const says = SIGN_IN_WORDS[own.language];
    await post.send({ to: own.address, subject: says.changed.subject, text: paragraphs(says.greeting(person.name), says.changed[change], says.changed.notYou(`${address()}/shelf`)) });
  } catch (reason) {
    log('A letter about a change of sign-in was not taken by the post.', reason);
  }
}
