import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { comma, count, measures } from './french.ts';

const way = (direction: 'down' | 'up'): string => (direction === 'down' ? 'tiré' : 'poussé');
const bows = (n: number): string => capital(count(n, 'coup d’archet', 'coups d’archet'));
const changes = (n: number): string => capital(count(n, 'changement d’archet', 'changements d’archet'));
const players = (n: number): string => count(n, 'musicien');

/** The bow along its hair, other sections' bowings and plans of changes. */
export const hair = {
  title: (where) => `L’archet le long de sa mèche, ${where}`,
  frog: 'talon',
  point: 'pointe',
  unit: 'mm',
  working: 'Les coups d’archet sont répartis sur la mèche. Toute touche continue.',
  failed: 'L’archet n’a pas pu être réparti ici. Vos indications sont gardées ; appuyez deux fois sur e pour essayer de nouveau.',
  off: 'ranger l’archet',
  none: 'Rien ne se joue à l’archet dans cette ligne.',
  bows: (n, measure, mm) => `${bows(n)} ; le plus long, à la mesure ${measure}, prend ${mm} mm de mèche.`,
  lasts: 'La mèche suffit partout.',
  'runs-out': (direction, measure, mm) => `Le ${way(direction)} à partir de la mesure ${measure} est trop court : il manque ${mm} mm de mèche.`,
  'wrong-end': (direction, measure, mm) => `Le ${way(direction)} à partir de la mesure ${measure} commence du mauvais côté : à la vitesse habituelle il manque ${mm} mm de mèche.`,
  shared: (measure) => `À partir de la mesure ${measure} chaque place change à son propre endroit ; la flèche vers le bas mène à une place et à son archet.`,
  split: 'Coupez la liaison, répartissez les changements, ou jouez plus doucement ou plus vite.',
  mend: (slower, faster) => `Cela suffit si l’archet va ${[slower && `plus lentement dans ${measures(slower)}`, faster && `plus vite dans ${measures(faster)}`].filter(Boolean).join(' et ')}.`,
  through: (first, last) => `${first} à ${last}`,
  noMend: 'Coupez une liaison ou faites une reprise avant.',
  table: 'Coup par coup',
  columns: ['Mesure', 'Coup', 'Depuis le talon', 'Vitesse', 'Pourquoi ainsi'],
  way: (from, to) => `de ${from} à ${to} mm`,
  paces: { usual: 'habituelle', faster: 'plus vite que d’habitude', slower: 'plus lentement que d’habitude' },
} satisfies Words['hair'];

export const beside = {
  title: (where) => `Les coups d’archet des autres pupitres, ${where}`,
  mine: (name) => `${name}, cette partie`,
  lane: (name, said) => `Coups d’archet de ${name}. ${said}`.trim(),
  working: 'Lecture des coups d’archet des autres pupitres. Toute touche continue.',
  failed: 'Les coups d’archet des autres pupitres n’ont pas pu être lus. Vos indications sont gardées ; appuyez deux fois sur y pour essayer de nouveau.',
  alone: 'Aucune autre partie de cordes de cette œuvre n’est dans la pochette.',
  apart: 'Aucun coup d’archet ne commence ici en même temps qu’un des miens.',
  alike: (n) => `${bows(n)} ${n === 1 ? 'commence avec le mien et va' : 'commencent avec les miens et vont'} dans le même sens.`,
  against: (n, other, where) =>
    n === 1 ? `Un coup d’archet commence avec le mien et va dans l’autre sens, dans ${measures(where)}.` : `${bows(n)} commencent avec les miens ; ${other === 1 ? 'l’un d’eux va' : `${count(other, 'd’entre eux', 'd’entre eux')} vont`} dans l’autre sens, dans ${measures(where)}.`,
  unison: (where) => `Les mêmes notes que moi dans ${where}.`,
  rhythm: (where) => `Mon rythme sur d’autres notes dans ${where}.`,
  legend: 'Les signes pleins sont imprimés ou notés, ceux au crayon sont déduits ; une croix : contre le mien.',
  again: 'La même musique ailleurs dans cette partie',
  as: { unison: (where) => `les mêmes notes que ${where}.`, rhythm: (where) => `le rythme de ${where}.` },
  take: 'prendre ces coups d’archet',
  taken: (whose) => `Les coups d’archet de ${whose} sont au crayon. Entrée les pose en collette, z les reprend.`,
  sameAlready: (whose) => `Il n’y a rien à ajouter ici des coups d’archet de ${whose}.`,
  left: (n, why) => `Laissé de côté sur ${count(n, 'note', 'notes', 'une')} : ${why}`,
  off: 'ranger les autres',
} satisfies Words['beside'];

export const plan = {
  title: 'Un plan des changements',
  form: 'Répartir les changements d’archet d’un passage',
  what: 'Bowline répartit les changements pour que personne ne manque d’archet, que les voisins de rang changent séparément et que peu changent ensemble. Rien ne vaut avant que vous le posiez en collette.',
  from: 'de la mesure',
  to: 'à la mesure',
  ask: 'répartir',
  again: 'refaire le plan',
  who: 'Qui joue',
  noNotes: 'Il n’y a rien à jouer à l’archet dans ces mesures. Choisissez-en d’autres.',
  working: (n) => `Les changements sont répartis entre ${players(n)}. Esc abandonne.`,
  better: 'Ce plan vaut pour l’instant ; on en cherche un meilleur. Vous pouvez le prendre, ou attendre.',
  notYet: (where) => `Jusqu’ici aucun plan ne respecte toutes les règles du pupitre dans ${where}. Le plus proche enfreint :`,
  failed: 'Aucun plan n’a pu être trouvé ici. Choisissez un autre passage, ou notez les changements à la main sur le lutrin ; ce qui est noté reste.',
  oneBow: (where) => `Un seul archet suffit pour ${where} : personne n’a à changer.`,
  kept: (n, of, where, allowed, seconds) =>
    `${changes(n)} entre ${players(of)} dans ${where}. Personne ne manque d’archet, les voisins de rang changent séparément, et au plus ${allowed} sur ${of} en ${comma(seconds)} s, comme le pupitre l’a fixé.`,
  best: 'Aucun plan n’est meilleur.',
  nearBest: 'Il en existe peut-être un meilleur ; aucun n’a été trouvé.',
  cannot: (where) => `Les règles du pupitre ne peuvent pas toutes être respectées dans ${where}. Voici le plan le plus proche ; il enfreint :`,
  notFound: (where) => `Aucun plan qui respecte toutes les règles du pupitre dans ${where} n’a été trouvé. Voici le plus proche ; il enfreint :`,
  limit: (who, where, seconds) => `${who} : un archet à partir de ${where} devrait durer ${comma(seconds)} s de plus qu’il ne dure.`,
  end: (who) => `${who} : le dernier archet va dans l’autre sens que la musique qui suit.`,
  partners: (who, where, seconds) => `${who.join(' et ')} changent ${seconds === '0' ? 'sur la même partie du temps' : `à ${comma(seconds)} s de trop près`} dans ${where}.`,
  crowd: (n, seconds, where, allowed) => `${capital(players(n))} ${n === 1 ? 'change' : 'changent'} en ${comma(seconds)} s dans ${where} ; ${allowed} au plus.`,
  more: (n) => `et ${n} de plus`,
  take: 'prendre au crayon',
  taken: (n) => `Le plan est au crayon : ${count(n, 'indication', 'indications', 'une')}. Entrée le pose en collette, z le reprend.`,
  draftFirst: 'Il y a des indications au crayon. Posez-les ou reprenez-les d’abord ; ensuite v répartit les changements.',
  planned: (work, where) => `${work} · un plan, ${where}`,
  sub: (mayTake) => `flèches : changement, rang${mayTake ? ' · Entrée : prendre au crayon' : ''} · Esc : quitter`,
} satisfies Words['plan'];
