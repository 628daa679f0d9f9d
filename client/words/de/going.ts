import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './german.ts';

/** What becomes of what one has written: what keeps it, what one can do, and that it has arrived. */
export const going = {
  what: {
    cut: 'Keine Leitung zur Bibliothek; sie wird wieder aufgenommen.',
    offline: 'Keine Leitung zur Bibliothek: Dieses Gerät hat kein Netz.',
    silent: 'Keine Leitung zur Bibliothek: Sie antwortet nicht, oder das Netz ist fort.',
    late: 'Noch nicht geschrieben: Die Bibliothek hat nicht geantwortet.',
    slower: 'Mehr auf einmal, als die Bibliothek annimmt.',
    shelvesAway: 'Die Bibliothek kommt gerade nicht an ihre Regale.',
    shelvesFull: 'Die Platte der Bibliothek ist voll: Gerade kann nichts geschrieben werden.',
    signedOut: 'Sie sind abgemeldet.',
    gone: 'Diese Stimme steht Ihnen nicht mehr offen: Das Programm ist vorbei, oder Ihr Platz wurde aufgegeben.',
    another: 'In diesem Browser hat sich jemand anders angemeldet.',
    oldProgram: 'Diese Seite ist älter als die Bibliothek.',
  },
  can: {
    cut: 'Schreiben Sie weiter; es geht herum, wenn die Leitung wieder da ist.',
    offline: 'Schreiben Sie weiter; es geht herum, wenn die Leitung wieder da ist.',
    silent: 'Schreiben Sie weiter; es geht herum, wenn die Leitung wieder da ist.',
    late: 'Schreiben Sie weiter; es wird von selbst noch einmal geschickt.',
    slower: 'Schreiben Sie weiter; es geht der Reihe nach.',
    shelvesAway: 'Schreiben Sie weiter; es wird von selbst noch einmal geschickt.',
    shelvesFull: 'Schreiben Sie weiter; es wird geschickt, sobald Platz ist. Sagen Sie es dem, der Bowline betreut.',
    signedOut: 'Öffnen Sie in diesem Browser einen Anmeldelink; was wartet, geht dann herum.',
    gone: 'Bitten Sie die Notenwartin oder den Notenwart um Zugang; was wartet, bleibt in diesem Browser.',
    another: 'Laden Sie die Seite neu; was Sie geschrieben haben, bleibt für Sie.',
    oldProgram: 'Laden Sie sie neu; was noch nicht fort ist, bleibt.',
  },
  waits: (n) => (n ? `${capital(count(n, 'Eintrag', 'Einträge'))} ${n === 1 ? 'wartet' : 'warten'} in Ihrem Bleistift.` : ''),
  notKept: 'Dieser Browser behält nichts: Lassen Sie die Seite offen.',
  written: 'Geschrieben: Alles, was wartete, ist in der Bibliothek.',
} satisfies Words['going'];
