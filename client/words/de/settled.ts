import type { Words } from '../en.ts';

/** One's own hand. */
export const hand = {
  title: 'Ihre Hand',
  what: 'Das sehen nur Sie. Für Sie gesuchte Fingersätze stellen nach hinten, was Ihre Hand nicht erreicht, sagen es und verbergen nichts.',
  reach: (percent) => `Spannweite: ${percent} % einer gewöhnlichen Hand`,
  shortFourth: 'mein vierter Finger ist kurz',
  keep: 'für mich merken',
  forget: 'vergessen',
  kept: 'Ihre Hand ist gemerkt, für Sie allein.',
  forgotten: 'Ihre Hand ist vergessen.',
  caution: 'Bowline zählt Millimeter; Ihre Hand kennt es nicht. Hören Sie auf, bevor es unangenehm wird, und machen Sie Pausen. Bei Schmerz, Taubheit oder Verlust der Kontrolle: aufhören und ärztlichen Rat holen. Wie eine Stelle zu spielen ist, fragen Sie Ihren Lehrer oder Ihre Lehrerin.',
} satisfies Words['hand'];

/** What a section has settled. */
export const settled = {
  title: (section) => `Was ${section} festgelegt hat`,
  what: 'Das gilt für jede Stimme auf Ihren Pulten. Was zu beachten ist, wird neu gelesen, sobald Sie es festhalten.',
  whoSets: 'Das legen Stimmführung oder Bibliothek fest. Sagen Sie es dort, wenn eine Zahl nicht zu Ihrem Spiel passt.',
  openStrings: 'Leere Saiten',
  open: { free: 'wie es jedem gefällt', avoided: 'auf längeren Noten gemieden', wanted: 'erwünscht, wo sie liegen' },
  bowLasts: 'Wie lange ein Bogen reicht',
  bowWhat: 'Sekunden, bis ein ganzer Bogen verbraucht ist, gehalten, in jeder Lautstärke.',
  bowShare: (instrument, percent) => `Sekunden, bis ein ganzer Bogen verbraucht ist, gehalten, wie auf der Violine; für ${instrument} rechnet Bowline mit ${percent} % davon.`,
  secondsAt: (dynamic) => `Sekunden, die ein Bogen in ${dynamic} reicht`,
  atOnce: 'Gleichzeitig wechseln an einer versetzten Stelle',
  strict: 'höchstens jeder achte: streng, für leise und offene Stellen',
  ordinary: 'höchstens jeder vierte: üblich',
  ownShare: (percent) => `höchstens ${percent} % der Spieler, wie es jetzt ist`,
  keep: 'festhalten',
  usual: 'zurück zum Üblichen',
  kept: 'Für die ganze Gruppe festgehalten. Was zu beachten ist, wird neu gelesen.',
  usualAgain: 'Für die ganze Gruppe gelten wieder die üblichen Zahlen.',
} satisfies Words['settled'];
