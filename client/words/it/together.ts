import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './italian.ts';

const marks = (n: number): string => count(n, 'segno', 'segni');

/** From one open measure to the next. */
export const run = {
  at: (measure, at, of) => `Battuta ${measure}, battuta aperta ${at} di ${of}.`,
  leads: (slip, plus, minus) => `${slip} è avanti, ${plus} a favore, ${minus} contro.`,
  lies: (slip, plus, minus) => `${slip} è qui, ${plus} a favore, ${minus} contro.`,
  inkOrOn: 'Invio la fissa a penna, n va avanti.',
  voteOrOn: '+ è a favore, − contro, n va avanti.',
  inked: (slip, n) => `${slip} è fissata a penna, ${marks(n)}.`,
  still: (slips) => `${slips} ancora qui: a accantona.`,
  goOn: (left) => `n apre la prossima; ${count(left, 'battuta', 'battute', 'una')} ancora da decidere.`,
  last: 'Nessun’altra battuta è aperta.',
  end: (met, decided, open) => `${capital(count(met, 'battuta aperta', 'battute aperte', 'una'))}: giro finito, ${decided} decise, ${open} ancora aperte. ${open ? 'n ricomincia.' : 'Tutto è deciso.'}`,
} satisfies Words['run'];

const INTERVALS = ['alla stessa altezza', 'un semitono', 'un tono', 'una terza minore', 'una terza maggiore', 'una quarta', 'un tritono', 'una quinta', 'una sesta minore', 'una sesta maggiore', 'una settima minore', 'una settima maggiore', 'un’ottava'];
const interval = (by: number): string => `${INTERVALS[Math.abs(by)] ?? `${Math.abs(by)} semitoni`} più ${by > 0 ? 'in alto' : 'in basso'}`;

/** Marks to where the same figure comes again. */
export const elsewhere = {
  title: 'La stessa figura altrove in questa parte',
  passageFirst: 'Prenda prima in mano un passo: Maiusc e una freccia. Una nota sola non è una figura.',
  nothingThere: 'In questo passo non c’è ancora nessun segno. Lo segni qui, poi i segni possono andare dove ritorna.',
  nowhere: 'Questa figura non torna in questa parte. Forse un passo più breve.',
  likeness: (likeness, by) => (likeness === 'same' ? 'le stesse note' : likeness === 'transposed' ? `le stesse, ${interval(by)}` : by === 0 ? 'gli stessi gradi, altri semitoni' : `gli stessi gradi, ${interval(by)}`),
  stays: (n) => `${count(n, 'segno di diteggiatura', 'segni di diteggiatura')} ${n === 1 ? 'resta' : 'restano'} indietro: lì non si suona`,
  stands: 'già segnato così',
  lay: (n) => (n === 1 ? 'scriverci i segni a matita' : `scrivere i segni a matita in ${count(n, 'posto', 'posti')}`),
  noneChosen: 'Tutti i posti sono lasciati fuori. Ne tenga uno, o lasci la lista con Esc.',
  laid: (n, places) => `${capital(marks(n))} a matita in ${count(places, 'posto', 'posti')}. Invio posa la striscia, z annulla tutto.`,
  already: 'La figura lì è già segnata così.',
  behind: (n) => `${capital(count(n, 'segno di diteggiatura', 'segni di diteggiatura'))} ${n === 1 ? 'è rimasto' : 'sono rimasti'} indietro: lì non si suona.`,
} satisfies Words['elsewhere'];

/** Names in what is said. */
export const named = {
  hint: '@ e un nome: la persona lo viene a sapere',
  people: 'Di chi si parla',
} satisfies Words['named'];

/** What waits. */
export const waits = {
  title: 'Che cosa La aspetta',
  nothing: 'Qui non La aspetta nulla.',
  nothingAnywhere: 'Non La aspetta nulla.',
  fetched: 'Si guarda che cosa La aspetta.',
  count: (n) => (n === 1 ? 'una cosa La aspetta' : `${n} cose La aspettano`),
  kinds: { named: 'Si fa il Suo nome', vote: 'Il Suo voto', talk: 'Discorsi sulle Sue strisce', watch: 'A cui badare al Suo posto', decided: 'Deciso da quando è stato qui' },
  vote: (slip, who) => `${slip} di ${who} aspetta il Suo voto.`,
  named: (who, where, text) => `${who}, ${where}: «${text}»`,
  talk: (slip, who, text) => `${who} sulla Sua ${slip}: «${text}»`,
  watch: (where, text) => `${where}: ${text}`,
  adopted: (slip, who) => `${slip} è stata fissata a penna da ${who}.`,
  setAside: (slip, who) => `${slip} è stata accantonata da ${who}.`,
  withdrawn: (slip, who) => `${slip} è stata ripresa da ${who}.`,
  go: 'Invio va lì, Esc lascia la lista.',
  inPart: (work, part) => `${work}, parte ${part}`,
} satisfies Words['waits'];

/** Sentences in the ledge. */
export const notices = {
  named: (who, where) => `${who} fa il Suo nome, ${where}. Maiusc n mostra che cosa La aspetta.`,
  laid: (slip, who) => `${who} posa ${slip} in una battuta in cui Lei ha scritto. Maiusc n mostra che cosa La aspetta.`,
  adopted: (slip, who) => `La Sua ${slip} è fissata a penna da ${who}.`,
  setAside: (slip, who) => `La Sua ${slip} è accantonata da ${who}.`,
  on: 'Il bordo dice quando si fa il Suo nome, o quando qualcosa di Suo è deciso.',
  off: 'Il bordo non dice più che cosa accade. Maiusc s lo rimette.',
} satisfies Words['notices'];

/** Letters by e-mail. */
export const letters = {
  title: 'Lettere per posta elettronica',
  what: (minutes) => `Una lettera, al più ogni ${minutes} minuti, quando si fa il Suo nome, una striscia aspetta il Suo voto prima di una prova, o qualcosa di Suo è deciso. Solo Lei vede l’indirizzo.`,
  none: 'Questa biblioteca non manda lettere. Il bibliotecario può predisporlo.',
  address: 'Indirizzo di posta',
  keep: 'mi scriva',
  forget: 'basta lettere',
  kept: (address) => `Le lettere vanno a ${address}. Ognuna dice come fermarle.`,
  forgotten: 'Basta lettere; l’indirizzo è dimenticato.',
} satisfies Words['letters'];
