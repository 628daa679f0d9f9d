import type { Words } from '../en.ts';

/** The keys on the stand. */
export const keys = {
  title: 'Tasti del leggio',
  close: 'Esc chiude questo',
  rows: [
    ['sinistra destra', 'nota'], ['Ctrl sinistra destra', 'battuta'], ['Maiusc sinistra destra', 'passo'], ['su giù', 'posto, o striscia se aperta'],
    ['0–4', 'dito'], ['t', 'pollice'], ['=', 'poi un dito: prende il posto'], ['Maiusc 1–4', 'corda'], ['x', 'estensione, contrazione'], ['h', 'armonico'],
    ['d u', 'in giù, in su'], ['c', 'cambio d’arco'], [', .', 'il cambio prima, dopo'], ['r', 'ripresa d’arco'], ['o', 'nella stessa arcata'], ['k j', 'dividere, unire la legatura'], ['/', 'parole'],
    ['Backspace', 'cancellare'], ['z', 'annullare'], ['Maiusc z', 'riscrivere'], ['p', 'la matita seguente'],
    ['Invio', 'posare la striscia; aprire la battuta; fissare a penna'], ['Esc', 'lasciare, chiudere'], ['+ −', 'a favore, contro'], ['s', 'dire qualcosa'], ['a', 'accantonare'], ['b', 'riprendere la propria striscia'], ['m', 'mettere a riposo'], ['i', 'ciò che è stato accantonato'], ['q', 'la storia della battuta'],
    ['f', 'diteggiature per il passo in mano'], ['a b', 'lì: posarne una sopra, una sotto il rigo'], ['v', 'distribuire i suoi cambi d’arco'], ['e', 'l’arco lungo i crini'], ['y', 'le arcate delle altre sezioni'], ['Spazio', 'ascoltare il passo in mano; fermare'], ['Maiusc Spazio', 'ascoltare la sezione che lo suona'], ['g', 'alla battuta'], ['n', 'prossima aperta'], ['w', 'prossima a cui badare'], ['Maiusc Y', 'un’altra parte sotto ogni riga'], ['< >', 'più piccolo, più grande'], ['Maiusc V', 'righe e pagine come stampate'], ['Ctrl P', 'stampare la parte'], ['l', 'luce del leggio'], ['Alt 1–4', 'Scaffale, Cartella, Leggio, Sezione'],
  ] as [string, string][],
} satisfies Words['keys'];

/** The words on the ledge. */
export const tools = {
  goTo: 'andare a',
  nextOpen: 'prossima aperta',
  nextWatch: 'prossima a cui badare',
  open: 'aprire',
  close: 'chiudere',
  lay: 'posare la striscia',
  inkIn: 'fissare a penna',
  takeBack: 'annullare',
  pencil: 'matita seguente',
  keys: 'tasti',
  say: 'dire qualcosa',
  light: 'luce',
  fingerings: 'diteggiature',
  shareOut: 'distribuire i cambi',
  hair: 'l’arco lungo i crini',
  beside: 'le arcate delle altre sezioni',
  short: { beside: 'altre', hair: 'arco', shareOut: 'distribuire', take: 'prendere', open: 'prossima', watch: 'attenzione', say: 'dire' },
} satisfies Words['tools'];
