import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { comma, count, measures } from './italian.ts';

const way = (direction: 'down' | 'up'): string => (direction === 'down' ? 'L’arcata in giù' : 'L’arcata in su');
const bows = (n: number): string => (n === 1 ? 'Un’arcata' : capital(count(n, 'arcata', 'arcate', 'una')));
const changes = (n: number): string => capital(count(n, 'cambio d’arco', 'cambi d’arco'));
const players = (n: number): string => (n === 1 ? 'uno strumentista' : n === 0 ? 'nessuno strumentista' : count(n, '', 'strumentisti'));

/** The bow along its hair, other sections' bowings and plans of changes. */
export const hair = {
  title: (where) => `L’arco lungo i crini, ${where}`,
  frog: 'tallone',
  point: 'punta',
  unit: 'mm',
  working: 'Le arcate si distribuiscono sui crini. Un tasto qualsiasi prosegue.',
  failed: 'Qui non è stato possibile distribuire l’arco. I Suoi segni restano; prema due volte e per riprovare.',
  off: 'riporre l’arco',
  none: 'In questa riga non si suona nulla con l’arco.',
  bows: (n, measure, mm) => `${bows(n)}; la più lunga, a battuta ${measure}, prende ${mm} mm di crini.`,
  lasts: 'I crini bastano dappertutto.',
  'runs-out': (direction, measure, mm) => `${way(direction)} da battuta ${measure} non basta: mancano ${mm} mm di crini.`,
  'wrong-end': (direction, measure, mm) => `${way(direction)} da battuta ${measure} comincia dalla parte sbagliata: alla velocità abituale mancano ${mm} mm di crini.`,
  shared: (measure) => `Da battuta ${measure} ogni posto cambia in un punto suo; la freccia in giù porta a un posto e al suo arco.`,
  split: 'Divida la legatura, distribuisca i cambi, o suoni più piano o più in fretta.',
  mend: (slower, faster) => `Basta se l’arco va ${[slower && `più lento a ${measures(slower)}`, faster && `più veloce a ${measures(faster)}`].filter(Boolean).join(' e ')}.`,
  through: (first, last) => `${first} a ${last}`,
  noMend: 'Divida una legatura o riprenda l’arco prima.',
  table: 'Arcata per arcata',
  columns: ['Battuta', 'Arcata', 'Dal tallone', 'Velocità', 'Perché così'],
  way: (from, to) => `da ${from} a ${to} mm`,
  paces: { usual: 'abituale', faster: 'più veloce del solito', slower: 'più lenta del solito' },
} satisfies Words['hair'];

export const beside = {
  title: (where) => `Le arcate delle altre sezioni, ${where}`,
  mine: (name) => `${name}, questa parte`,
  lane: (name, said) => `Arcate di ${name}. ${said}`.trim(),
  working: 'Si leggono le arcate delle altre sezioni. Un tasto qualsiasi prosegue.',
  failed: 'Non è stato possibile leggere le arcate delle altre sezioni. I Suoi segni restano; prema due volte y per riprovare.',
  alone: 'Nella cartella non c’è nessun’altra parte d’archi di quest’opera.',
  apart: 'Qui nessuna arcata comincia insieme a una delle mie.',
  alike: (n) => `${bows(n)} ${n === 1 ? 'comincia insieme alla mia e va' : 'cominciano insieme alle mie e vanno'} nello stesso verso.`,
  against: (n, other, where) =>
    n === 1 ? `Un’arcata comincia insieme alla mia e va nell’altro verso, a ${measures(where)}.` : `${bows(n)} cominciano insieme alle mie; ${other === 1 ? 'una va' : `${count(other, 'di esse', 'di esse', 'una')} vanno`} nell’altro verso, a ${measures(where)}.`,
  unison: (where) => `Le stesse note delle mie a ${where}.`,
  rhythm: (where) => `Il mio ritmo con altre note a ${where}.`,
  legend: 'I segni pieni sono stampati o scritti, quelli a matita dedotti; una croce: contro la mia.',
  again: 'La stessa musica altrove in questa parte',
  as: { unison: (where) => `le stesse note di ${where}.`, rhythm: (where) => `il ritmo di ${where}.` },
  take: 'prendere queste arcate',
  taken: (whose) => `Le arcate di ${whose} sono a matita. Invio le posa come striscia, z le annulla.`,
  sameAlready: (whose) => `Delle arcate di ${whose} qui non c’è nulla da aggiungere.`,
  left: (n, why) => `Tralasciato su ${count(n, 'nota', 'note', 'una')}: ${why}`,
  off: 'riporre le altre',
} satisfies Words['beside'];

export const plan = {
  title: 'Un piano per i cambi',
  form: 'Distribuire i cambi d’arco di un passo',
  what: 'Bowline distribuisce i cambi in modo che a nessuno manchi l’arco, che i compagni di leggio cambino separati e che pochi cambino insieme. Nulla vale prima che Lei lo posi come striscia.',
  from: 'da battuta',
  to: 'a battuta',
  ask: 'distribuire',
  again: 'rifare il piano',
  who: 'Chi suona',
  noNotes: 'In queste battute non c’è nulla da suonare con l’arco. Ne scelga altre.',
  working: (n) => `I cambi si distribuiscono fra ${players(n)}. Esc lascia.`,
  better: 'Per ora vale questo piano; se ne cerca uno migliore. Può prenderlo, o aspettare.',
  notYet: (where) => `Finora nessun piano rispetta tutte le regole della sezione a ${where}. Il più vicino infrange:`,
  failed: 'Qui non è stato possibile trovare un piano. Scelga un altro passo, o scriva i cambi a mano sul leggio; ciò che è scritto resta.',
  oneBow: (where) => `Un solo arco basta per ${where}: nessuno deve cambiare.`,
  kept: (n, of, where, allowed, seconds) =>
    `${changes(n)} fra ${players(of)} a ${where}. A nessuno manca l’arco, i compagni di leggio cambiano separati, e al massimo ${allowed} su ${of} entro ${comma(seconds)} s, come la sezione ha fissato.`,
  best: 'Nessun piano è migliore.',
  nearBest: 'Forse ne esiste uno migliore; non è stato trovato.',
  cannot: (where) => `A ${where} non si possono rispettare tutte le regole della sezione. Questo è il piano più vicino; infrange:`,
  notFound: (where) => `Per ${where} non è stato trovato un piano che rispetti tutte le regole della sezione. Questo è il più vicino; infrange:`,
  limit: (who, where, seconds) => `${who}: un arco da ${where} dovrebbe durare ${comma(seconds)} s più di quanto dura.`,
  end: (who) => `${who}: l’ultimo arco va nel verso opposto a quello che vuole la musica dopo.`,
  partners: (who, where, seconds) => `${who.join(' e ')} cambiano ${seconds === '0' ? 'sulla stessa parte del tempo' : `${comma(seconds)} s troppo vicini`} a ${where}.`,
  crowd: (n, seconds, where, allowed) => `${capital(players(n))} ${n === 1 ? 'cambia' : 'cambiano'} entro ${comma(seconds)} s a ${where}; al massimo ${allowed}.`,
  more: (n) => `e altri ${n}`,
  take: 'prendere a matita',
  taken: (n) => `Il piano è a matita: ${count(n, 'segno', 'segni')}. Invio lo posa come striscia, z lo annulla.`,
  draftFirst: 'Ci sono segni a matita. Prima li posi o li annulli; poi v distribuisce i cambi.',
  planned: (work, where) => `${work} · un piano, ${where}`,
  sub: (mayTake) => `frecce: cambio, leggio${mayTake ? ' · Invio: prendere a matita' : ''} · Esc: lasciare`,
} satisfies Words['plan'];
