import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './italian.ts';

/** What becomes of what one has written: what keeps it, what one can do, and that it has arrived. */
export const going = {
  what: {
    cut: 'Nessuna linea con l’archivio; si sta riprendendo.',
    offline: 'Nessuna linea con l’archivio: questo dispositivo non ha rete.',
    silent: 'Nessuna linea con l’archivio: non risponde, o manca la rete.',
    late: 'Non ancora scritto: l’archivio non ha risposto.',
    slower: 'Più in una volta di quanto l’archivio prenda.',
    shelvesAway: 'In questo momento l’archivio non arriva ai suoi scaffali.',
    shelvesFull: 'Il disco dell’archivio è pieno: ora non si può scrivere nulla.',
    signedOut: 'Lei non è più collegato.',
    gone: 'Questa parte non Le è più aperta: il programma è finito, o il Suo posto è stato lasciato.',
    another: 'In questo browser si è collegato qualcun altro.',
    oldProgram: 'Questa pagina è più vecchia dell’archivio.',
  },
  can: {
    cut: 'Continui a segnare; girerà quando la linea torna.',
    offline: 'Continui a segnare; girerà quando la linea torna.',
    silent: 'Continui a segnare; girerà quando la linea torna.',
    late: 'Continui a segnare; riparte da sé.',
    slower: 'Continui a segnare; ogni segno va a suo turno.',
    shelvesAway: 'Continui a segnare; riparte da sé.',
    shelvesFull: 'Continui a segnare; parte appena c’è posto. Lo dica a chi si occupa di Bowline.',
    signedOut: 'Apra un link di accesso in questo browser; ciò che aspetta girerà allora.',
    gone: 'Chieda l’accesso all’archivista; ciò che aspetta resta in questo browser.',
    another: 'Ricarichi la pagina; ciò che ha scritto resta per Lei.',
    oldProgram: 'La ricarichi; ciò che non è partito resta.',
  },
  waits: (n) => (n ? `${capital(count(n, 'segno', 'segni'))} ${n === 1 ? 'aspetta' : 'aspettano'} nella Sua matita.` : ''),
  notKept: 'Questo browser non conserva nulla: lasci aperta la pagina.',
  written: 'Scritto: tutto ciò che aspettava è nell’archivio.',
} satisfies Words['going'];
