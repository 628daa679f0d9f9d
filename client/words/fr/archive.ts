import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './french.ts';

const marks = (n: number): string => count(n, 'signe');
const slips = (n: number): string => count(n, 'collette', 'collettes', 'une');
const sets = (n: number): string => capital(count(n, 'jeu de signes', 'jeux de signes'));

export const archive = {
  middle: 'signes conservés, saison après saison',
  link: 'Les archives : signes des saisons passées',
  where: (n) => (n ? `${sets(n)} aux archives.` : 'Rien n’est encore conservé.'),
  sub: 'Échap : retour au rayon',
  none: 'Dans la Pochette, les signes d’une œuvre se conservent avec l’ensemble, le chef et la saison. Ils sont alors ici, et proposés quand l’œuvre revient au rayon.',
  under: (when, conductor, ensemble) => `${when}, sous ${conductor}, ${ensemble}`,
  keptBy: (who, day) => `conservé par ${who}, ${day}`,
  part: (name, n) => `${name} : ${marks(n)}`,
  all: 'emporter toutes les archives',
  takeIn: 'recevoir des archives',
  reading: 'Les archives sont lues et vérifiées.',
  takenIn: (added, known) => `${sets(added)} reçu${added > 1 ? 's' : ''}${known ? ` ; ${known} étaient déjà là` : ''}.`,
} satisfies Words['archive'];

export const reuse = {
  title: (work) => `${work}, de saison en saison`,
  fetched: 'On cherche dans les archives.',
  nothing: 'Les archives n’ont pas de signes pour cette œuvre.',
  offer: (when, conductor) => `Coups d’archet de ${when} sous ${conductor}`,
  byMusic: (title) => `la même musique, appelée là ${title}`,
  asSlips: 'les poser en collettes',
  asInk: 'les fixer à l’encre',
  working: 'Les signes sont posés note par note.',
  brought: (part, laid, inked, left) => `${part} : ${laid ? `${slips(laid)} posée${laid > 1 ? 's' : ''}${inked ? `, ${inked} fixée${inked > 1 ? 's' : ''}` : ''}` : 'rien de posé'}${left ? ` ; ${marks(left)} laissé${left > 1 ? 's' : ''}, leur musique n’est pas ici` : ''}.`,
  nothingBrought: 'Aucune partie de cette œuvre n’a la même musique.',
  putBy: 'Conserver ces signes',
  ensemble: 'Ensemble',
  conductor: 'Chef',
  season: 'Saison',
  put: 'conserver',
  kept: (when) => `Les signes sont conservés : ${when}. Ils seront proposés quand cette œuvre reviendra au rayon.`,
  travel: (part) => `Porter les coups d’archet de ${part} à ceux qui jouent la même chose`,
  travelLook: 'chercher qui le joue',
  travelNone: 'Personne d’autre ne joue cette musique, ou tous ont déjà ces coups d’archet.',
  passage: (section, where, n) => `${section}, ${where} : ${marks(n)}`,
  likeness: { unison: 'les mêmes notes', rhythm: 'le même rythme' },
  send: (n) => (n === 1 ? 'poser la collette chez son chef de pupitre' : `poser ${slips(n)} chez leurs chefs de pupitre`),
  misprints: 'Fautes de l’édition',
  misprintsNone: 'Personne n’a trouvé de faute. Au lutrin, une mesure ouverte a une ligne pour cela.',
  misprint: (part, where, says, should) => `${part}, ${where} : il y a ${says}, il faut ${should}`,
  foundBy: (who, day) => `${who}, ${day}`,
  putRight: 'corrigé dans l’édition',
  list: 'la liste',
  erase: 'À gommer avant de rendre',
  earlier: 'États antérieurs',
} satisfies Words['reuse'];

export const misprint = {
  title: 'Une faute dans l’édition',
  says: 'Il y a',
  should: 'Il faut',
  write: 'la noter',
  written: (measure) => `La faute de la mesure ${measure} est sur la liste du bibliothécaire.`,
} satisfies Words['misprint'];

export const revisions = {
  middle: (work) => `${work}, état par état`,
  fetched: 'On va chercher les états de la partie.',
  first: 'la partie telle qu’elle est venue',
  kinds: { inked: 'fixé à l’encre', restored: 'retour à des signes antérieurs', stage: 'passé plus loin', edition: 'une édition corrigée posée par-dessus' },
  in: (where, more) => `${more || where.includes(',') ? 'mesures' : 'mesure'} ${where}${more ? ` et ${more} autres` : ''}`,
  list: 'Tous les états',
  picture: (n) => `${capital(count(n, 'état'))} de gauche à droite ; les deux que l’on compare sont entre crochets.`,
  before: 'avant',
  after: 'après',
  choose: (what, which) => `${what} : ${which}`,
  sum: (changes, n) => (changes ? `${capital(marks(changes))} ${changes === 1 ? 'diffère' : 'diffèrent'}, en ${count(n, 'mesure', 'mesures', 'une')}.` : 'Rien ne diffère.'),
  sub: 'flèches : après · Maj et flèches : avant · Ctrl P : collettes sur papier · Échap : au lutrin',
  none: 'Entre ces deux états, aucun signe ne diffère.',
  added: (what, seats) => `nouveau : ${what}${seats ? `, ${seats}` : ''}`,
  rubbedOut: (what, seats) => `parti : ${what}${seats ? `, ${seats}` : ''}`,
  changed: (before, after, seats) => `${after} au lieu de ${before}${seats ? `, ${seats}` : ''}`,
  back: (state) => `Revenir aux signes de : ${state}`,
  why: 'Pourquoi',
  goBack: 'revenir',
  gone: 'Ces signes valent à nouveau. Ce qui était à leur place est écarté et reste lisible.',
  onlyPrincipal: 'Seul le chef de pupitre revient à des signes antérieurs.',
  print: 'collettes sur papier',
  slips: (part) => `Collettes pour ${part}`,
} satisfies Words['revisions'];
