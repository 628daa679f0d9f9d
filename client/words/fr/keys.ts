import type { Words } from '../en.ts';

/** The keys on the stand. */
export const keys = {
  title: 'Touches du lutrin',
  close: 'Esc ferme ceci',
  rows: [
    ['gauche droite', 'note'], ['Ctrl gauche droite', 'mesure'], ['Maj gauche droite', 'passage'], ['haut bas', 'place, ou collette ouverte'],
    ['0–4', 'doigt'], ['t', 'pouce'], ['=', 'puis un doigt : il prend le relais'], ['Maj 1–4', 'corde'], ['x', 'extension, contraction'], ['h', 'harmonique'],
    ['d u', 'tiré, poussé'], ['c', 'changement d’archet'], [', .', 'le changement plus tôt, plus tard'], ['r', 'reprise d’archet'], ['o', 'dans le même coup d’archet'], ['k j', 'couper, joindre la liaison'], ['/', 'mots'],
    ['Retour arrière', 'gommer'], ['z', 'reprendre'], ['Maj z', 'remettre'], ['p', 'le crayon suivant'],
    ['Entrée', 'poser la collette ; ouvrir la mesure ; fixer à l’encre'], ['Esc', 'quitter, fermer'], ['+ −', 'pour, contre'], ['s', 'dire un mot'], ['a', 'écarter'], ['b', 'reprendre sa collette'], ['m', 'mettre au repos'], ['i', 'ce qui a été écarté'], ['q', 'l’histoire de la mesure'],
    ['f', 'doigtés du passage en main'], ['a b', 'là : en poser un dessus, un dessous de la portée'], ['v', 'répartir ses changements d’archet'], ['e', 'l’archet le long de sa mèche'], ['y', 'les coups d’archet des autres pupitres'], ['Espace', 'écouter le passage en main ; arrêter'], ['Maj Espace', 'écouter le pupitre le jouer'], ['g', 'aller à la mesure'], ['n', 'mesure ouverte suivante'], ['w', 'prochaine à surveiller'], ['Maj Y', 'une autre partie sous chaque ligne'], ['< >', 'plus petit, plus grand'], ['Maj V', 'lignes et pages comme imprimées'], ['Ctrl P', 'imprimer la partie'], ['l', 'lampe du lutrin'], ['Alt 1–4', 'Rayon, Pochette, Lutrin, Pupitre'],
  ] as [string, string][],
} satisfies Words['keys'];

/** The words on the ledge. */
export const tools = {
  goTo: 'aller à',
  nextOpen: 'ouverte suivante',
  nextWatch: 'prochaine à surveiller',
  open: 'ouvrir',
  close: 'fermer',
  lay: 'poser la collette',
  inkIn: 'fixer à l’encre',
  takeBack: 'reprendre',
  pencil: 'crayon suivant',
  keys: 'touches',
  say: 'dire un mot',
  light: 'lampe',
  fingerings: 'doigtés',
  shareOut: 'répartir les changements',
  hair: 'l’archet le long de sa mèche',
  beside: 'les coups d’archet des autres pupitres',
  short: { beside: 'autres', hair: 'archet', shareOut: 'répartir', take: 'prendre', open: 'suivante', watch: 'attention', say: 'dire' },
} satisfies Words['tools'];
