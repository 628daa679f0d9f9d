import type { Severity } from '../../../core/check/finding.ts';
import type { Words } from '../en.ts';

const severities: Record<Severity, string> = { cannotPlay: 'injouable', collides: 'se heurte', worthALook: 'à regarder' };
const weights: Record<Severity, string> = {
  cannotPlay: 'Injouable tel que c’est noté : montré en premier.',
  collides: 'Deux musiciens ou deux signes se gênent.',
  worthALook: 'À regarder : un musicien voudrait le savoir. Mettez-le au repos là où c’est voulu.',
};
const families: Record<string, string> = { fingering: 'Les doigts', bow: 'L’archet', desk: 'Au même rang', section: 'Le pupitre', parts: 'La partie', notation: 'Les signes sur la page' };

const sources: Record<string, string> = {
  'musicxml-4': 'W3C Music Notation Community Group, MusicXML 4.0, 2021',
  davidoff: 'K. Davidoff, Violoncell-Schule, 1888',
  simandl: 'F. Simandl, Nouvelle méthode de contrebasse ; doigtés de mémoire',
  tnua: 'TNUA, recueil de doigtés de violon : dix professionnels, 2021',
  hoffmann: 'R. Hoffmann, Bow length',
  stringsection: 'stringsection.co.uk, sur les changements libres, 2012',
  zlotbox: 'zlotbox.com, sur les changements libres',
  green: 'E. Green, Orchestral Bowings and Routines, 1957 ; de mémoire',
  thart: 'J. ’t Hart, quand un glissement s’entend comme tel, 1976 ; de mémoire',
  martens: 'F. Martens, Violin Mastery, 1919',
  'common-practice': 'Usage courant, sans source',
  'from-memory': 'De mémoire, non vérifié',
  chosen: 'Nombres choisis, non mesurés ; un pupitre peut fixer les siens',
};

/** The pages about the rules. */
export const rules = {
  middle: 'ce que cherchent les lunettes',
  where: (rules) => `${rules} règles. Suivez-en une pour lire pourquoi.`,
  sub: 'Tab et Entrée : vers une règle',
  one: 'L’une des règles.',
  oneSub: 'Là où elle ne convient pas à votre musique, mettez la remarque au repos sur le lutrin.',
  weight: 'Ce qu’elle pèse',
  says: 'Ce qu’elle dit',
  source: 'D’où elle vient',
  all: 'toutes les règles',
  why: 'en savoir plus sur cette règle',
  severities,
  weights,
  families,
  sources,
} satisfies Words['rules'];
