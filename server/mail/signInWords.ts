import type { LetterLanguage } from '../../core/agreement/wire/signIn.ts';

/** What was changed about how somebody signs in. */
export type Change = 'passwordSet' | 'passwordGone' | 'address' | 'identityBound' | 'identityGone';

interface SignInWords {
  greeting(name: string): string;
  link: { subject: string; text(minutes: number): string; notYou: string };
  invitation: { subject(ensemble: string): string; text(ensemble: string, days: number): string; notYou: string };
  claim: { subject: string; text(hours: number): string; notYou: string };
  changed: Record<Change, string> & { subject: string; notYou(shelf: string): string };
}

/** What letters about signing in say; the language was chosen with the address. */
export const SIGN_IN_WORDS: Record<LetterLanguage, SignInWords> = {
  en: {
    greeting: (name) => `Good day ${name},`,
    link: {
      subject: 'Bowline: your link to sign in',
      text: (minutes) => `This link signs you in once, within the next ${minutes} minutes:`,
      notYou: 'Did you not ask for it? Then leave it; nothing happens. Give it to nobody.',
    },
    invitation: {
      subject: (ensemble) => `Bowline: ${ensemble} invites you`,
      text: (ensemble, days) => `The librarian of ${ensemble} has laid a place for you in Bowline, where the section agrees its fingerings and bowings. This link brings you in; it works once, within ${days} days:`,
      notYou: 'Is this not for you? Then leave it; nobody comes in by it. Give it to nobody.',
    },
    claim: {
      subject: 'Bowline: is this your address?',
      text: (hours) => `Somebody who is signed in as you wants to sign in with this address from now on. If that is you, open this link within ${hours} hours, in the browser in which you are signed in:`,
      notYou: 'Was it not you? Then leave it; nothing changes.',
    },
    changed: {
      subject: 'Bowline: how you sign in was changed',
      passwordSet: 'A new password was set for you. You were signed out everywhere else.',
      passwordGone: 'Your password was done away with. You were signed out everywhere else.',
      address: 'You no longer sign in with this address.',
      identityBound: 'From now on your orchestra’s own sign-in brings you into Bowline.',
      identityGone: 'Your orchestra’s own sign-in no longer brings you into Bowline.',
      notYou: (shelf) => `Was it not you? Sign in, look under “My sign-in” where you are signed in, end what is not yours, and tell the librarian: ${shelf}`,
    },
  },
  de: {
    greeting: (name) => `Guten Tag ${name},`,
    link: {
      subject: 'Bowline: Ihr Link zum Anmelden',
      text: (minutes) => `Dieser Link meldet Sie einmal an, in den nächsten ${minutes} Minuten:`,
      notYou: 'Haben Sie ihn nicht verlangt? Dann lassen Sie ihn liegen; es geschieht nichts. Geben Sie ihn niemandem.',
    },
    invitation: {
      subject: (ensemble) => `Bowline: ${ensemble} lädt Sie ein`,
      text: (ensemble, days) => `Die Bibliothek von ${ensemble} hat Ihnen einen Platz in Bowline eingerichtet, wo die Gruppe Fingersätze und Striche abspricht. Dieser Link führt Sie hinein; er gilt einmal, ${days} Tage lang:`,
      notYou: 'Ist das nicht für Sie? Dann lassen Sie ihn liegen; niemand kommt damit hinein. Geben Sie ihn niemandem.',
    },
    claim: {
      subject: 'Bowline: Ist das Ihre Adresse?',
      text: (hours) => `Wer als Sie angemeldet ist, will sich künftig mit dieser Adresse anmelden. Sind Sie das, so öffnen Sie diesen Link binnen ${hours} Stunden, in dem Browser, in dem Sie angemeldet sind:`,
      notYou: 'Waren Sie es nicht? Dann lassen Sie ihn liegen; es ändert sich nichts.',
    },
    changed: {
      subject: 'Bowline: Ihre Anmeldung wurde geändert',
      passwordSet: 'Für Sie wurde ein neues Passwort gesetzt. Überall sonst wurden Sie abgemeldet.',
      passwordGone: 'Ihr Passwort wurde abgeschafft. Überall sonst wurden Sie abgemeldet.',
      address: 'Mit dieser Adresse melden Sie sich nicht mehr an.',
      identityBound: 'Von jetzt an führt die Anmeldung Ihres Orchesters Sie in Bowline hinein.',
      identityGone: 'Die Anmeldung Ihres Orchesters führt Sie nicht mehr in Bowline hinein.',
      notYou: (shelf) => `Waren Sie es nicht? Melden Sie sich an, sehen Sie unter „Meine Anmeldung“ nach, wo Sie angemeldet sind, beenden Sie, was nicht von Ihnen ist, und sagen Sie es der Bibliothek: ${shelf}`,
    },
  },
  fr: {
    greeting: (name) => `Bonjour ${name},`,
    link: {
      subject: 'Bowline : votre lien pour entrer',
      text: (minutes) => `Ce lien vous fait entrer une fois, dans les ${minutes} minutes :`,
      notYou: 'Vous ne l’avez pas demandé ? Laissez-le ; il ne se passe rien. Ne le donnez à personne.',
    },
    invitation: {
      subject: (ensemble) => `Bowline : ${ensemble} vous invite`,
      text: (ensemble, days) => `La bibliothèque de ${ensemble} vous a préparé une place dans Bowline, où le pupitre convient des doigtés et des coups d’archet. Ce lien vous y fait entrer ; il sert une fois, pendant ${days} jours :`,
      notYou: 'Ce n’est pas pour vous ? Laissez-le ; personne n’entre avec. Ne le donnez à personne.',
    },
    claim: {
      subject: 'Bowline : est-ce votre adresse ?',
      text: (hours) => `Une personne entrée sous votre nom veut désormais entrer avec cette adresse. Si c’est vous, ouvrez ce lien d’ici ${hours} heures, dans le navigateur où vous êtes :`,
      notYou: 'Ce n’était pas vous ? Laissez-le ; rien ne change.',
    },
    changed: {
      subject: 'Bowline : votre façon d’entrer a changé',
      passwordSet: 'Un nouveau mot de passe a été fixé pour vous. Partout ailleurs, vous êtes sorti.',
      passwordGone: 'Votre mot de passe a été supprimé. Partout ailleurs, vous êtes sorti.',
      address: 'Vous n’entrez plus avec cette adresse.',
      identityBound: 'Désormais, la connexion de votre orchestre vous fait entrer dans Bowline.',
      identityGone: 'La connexion de votre orchestre ne vous fait plus entrer dans Bowline.',
      notYou: (shelf) => `Ce n’était pas vous ? Entrez, regardez sous « Ma façon d’entrer » où vous êtes, terminez ce qui n’est pas de vous, et dites-le à la bibliothèque : ${shelf}`,
    },
  },
  it: {
    greeting: (name) => `Buongiorno ${name},`,
    link: {
      subject: 'Bowline: il Suo link per entrare',
      text: (minutes) => `Questo link La fa entrare una volta, nei prossimi ${minutes} minuti:`,
      notYou: 'Non l’ha chiesto Lei? Lo lasci stare; non succede nulla. Non lo dia a nessuno.',
    },
    invitation: {
      subject: (ensemble) => `Bowline: ${ensemble} La invita`,
      text: (ensemble, days) => `La biblioteca di ${ensemble} Le ha preparato un posto in Bowline, dove la fila concorda diteggiature e arcate. Questo link La fa entrare; vale una volta, per ${days} giorni:`,
      notYou: 'Non è per Lei? Lo lasci stare; nessuno entra con questo. Non lo dia a nessuno.',
    },
    claim: {
      subject: 'Bowline: è il Suo indirizzo?',
      text: (hours) => `Chi è entrato a Suo nome vuole d’ora in poi entrare con questo indirizzo. Se è Lei, apra questo link entro ${hours} ore, nel browser in cui è entrato:`,
      notYou: 'Non era Lei? Lo lasci stare; non cambia nulla.',
    },
    changed: {
      subject: 'Bowline: il Suo modo di entrare è cambiato',
      passwordSet: 'È stata impostata per Lei una nuova parola d’ordine. Altrove non è più entrato.',
      passwordGone: 'La Sua parola d’ordine è stata tolta. Altrove non è più entrato.',
      address: 'Con questo indirizzo non entra più.',
      identityBound: 'D’ora in poi l’accesso della Sua orchestra La fa entrare in Bowline.',
      identityGone: 'L’accesso della Sua orchestra non La fa più entrare in Bowline.',
      notYou: (shelf) => `Non era Lei? Entri, guardi sotto «Il mio accesso» dove è entrato, chiuda ciò che non è Suo e lo dica alla biblioteca: ${shelf}`,
    },
  },
};
