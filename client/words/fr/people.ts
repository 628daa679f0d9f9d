import type { TrailFacts } from '../../../core/agreement/wire/trail.ts';
import type { Words } from '../en.ts';
import type { Told } from '../people.ts';
import { listed } from './french.ts';

const part = ({ part: name, work }: TrailFacts): string => [name, work].filter(Boolean).join(', ');
const whose = ({ by, about }: Told): string => (about === null ? by : about);
const ways: Record<string, string> = { link: 'par un lien', invitation: 'par une invitation', letter: 'par courrier', password: 'par mot de passe', identity: 'par l’entrée de la maison' };
const way = ({ way: how }: TrailFacts): string => (how ? ` ${ways[how] ?? how}` : '');

export const people: Words['people'] = {
  ensemble: 'Ensemble',
  looked: (name) => `${name} est ouvert.`,
  rename: 'l’appeler ainsi',
  renamed: (name) => `L’ensemble s’appelle maintenant ${name}.`,
  member: 'membre',
  deputy: 'remplaçant',
  leads: (sections) => `chef de ${listed(sections)}`,
  sits: (sections) => listed(sections),
  deputiesIn: (programmes) => (programmes.length ? `remplaçant dans ${listed(programmes)}` : 'remplaçant, encore sans programme'),
  isDeputy: 'remplaçant : quelques programmes seulement, chacun jusqu’à son dernier jour',
  giveRole: 'faire aussi bibliothécaire',
  takeRole: 'n’est plus bibliothécaire',
  makeMember: 'faire membre',
  makeDeputy: 'faire remplaçant',
  signOut: 'fermer ses accès',
  signOutSure: (name) => `Tout ce que ${name} a d’ouvert ici se ferme aussitôt, et les liens remis n’ouvrent plus rien. Les lignes pas encore envoyées attendent sur son appareil.`,
  signedOut: (name, ended) => `${ended ? `Les accès de ${name} sont fermés.` : `${name} n’avait aucun accès ouvert.`} On rentre par un nouveau lien ou par sa propre voie.`,
  leaves: 'quitte l’ensemble',
  leavesSure: (name) => `${name} s’en va : ses places sont libres et rien ne lui est plus ouvert. Ce qui a été écrit garde son nom.`,
  yourself: 'C’est vous.',
  sure: 'oui, c’est cela',
  rather: 'plutôt pas',
  left: (name) => `${name} est parti. Ses places sont libres : voyez les pupitres. Son nom est parmi ceux qui sont partis.`,
  changed: (name, what) => `${name} est maintenant ${what}.`,
  gone: 'Qui est parti',
  goneOn: (day) => `parti le ${day}`,
  back: 'de retour',
  isBack: (name) => `${name} est de retour, comme membre. Donnez-lui une place dans un pupitre.`,
  over: 'Vous êtes ici pour quelques programmes, et aucun n’est en cours. Le bibliothécaire vous placera dans le prochain.',
};

export const mine: Words['mine'] = {
  title: 'Ce qui est gardé sur moi',
  what: 'Votre nom, vos ensembles et vos places, votre main, l’adresse pour les lettres, vos entrées, jusqu’où vous avez lu, et ce que vous avez écrit : propositions, voix, remarques, fausses notes. Le bibliothécaire et le chef de pupitre lisent qui a fait quoi ; votre main et votre adresse, vous seul.',
  fetch: 'l’emporter, en un fichier',
  erase: 'Me faire effacer',
  eraseWhat: 'Votre nom devient partout « Former player », dans les saisons passées aussi. Main, adresse, entrées et places disparaissent ; les signes et les voix restent, sans nom. C’est sans retour. Ce que d’autres ont écrit de leur main reste, et les sauvegardes d’avant gardent le nom tant qu’on ne les jette pas.',
  eraseOther: (name) => `${name} devient partout « Former player ». Les signes et les voix restent, sans nom. C’est sans retour ; les sauvegardes d’avant gardent le nom tant qu’on ne les jette pas.`,
  type: (name) => `Tapez ${name}`,
  comments: 'et aussi ce qui a été dit en remarques',
  do: 'effacer pour toujours',
  erased: 'Effacé. Les signes restent, le nom n’y est plus.',
};

export const trail: Words['trail'] = {
  title: 'Ce qui a été fait ici',
  person: 'Qui',
  kind: 'Quoi',
  everybody: 'tous',
  everything: 'tout',
  none: 'Rien de cela n’a été fait.',
  older: 'plus loin en arrière',
  library: 'Bowline',
  kinds: {
    signedIn: 'entré', signInFailed: 'pas entré', signedOut: 'sorti', sessionEnded: 'entrée close', wayInSet: 'accès mis', wayInRemoved: 'accès ôté', linkMade: 'lien fait', linkWithdrawn: 'lien retiré',
    personAdded: 'ajouté', personLeft: 'parti', personBack: 'revenu', roleGiven: 'charge donnée', roleTaken: 'charge retirée', becameMember: 'devenu membre', becameDeputy: 'devenu remplaçant', dataHandedOut: 'ses données emportées', erased: 'effacé',
    ensembleNamed: 'ensemble nommé', sectionAdded: 'pupitre ajouté', seatingChanged: 'placement', settingsChanged: 'nombres des lunettes',
    programmeAdded: 'programme ajouté', programmeChanged: 'programme changé', partAssigned: 'partie donnée à un pupitre', workLaid: 'partition posée', filesLaid: 'autres parties', editionLaid: 'édition corrigée', setKept: 'signes mis de côté', archiveTakenIn: 'archives reçues', handedOut: 'remis',
  },
  told: {
    signedIn: (t) => `${whose(t)} est entré${way(t.facts)}.`,
    signInFailed: (t) => `Quelqu’un a voulu entrer comme ${whose(t)}${way(t.facts)}, sans y parvenir.`,
    signedOut: (t) => `${whose(t)} est sorti.`,
    sessionEnded: (t) => (t.about === null ? `${t.by} a clos une de ses entrées.` : `${t.by} a clos une entrée de ${t.about}.`),
    wayInSet: (t) => `${whose(t)} a mis un accès${way(t.facts)}.`,
    wayInRemoved: (t) => `${whose(t)} a ôté un accès${way(t.facts)}.`,
    linkMade: (t) => `${t.by} a fait un lien d’entrée${t.about === null ? '' : ` pour ${t.about}`}.`,
    linkWithdrawn: (t) => `${t.by} a retiré un lien${t.about === null ? '' : ` de ${t.about}`}.`,
    personAdded: (t) => `${t.by} a ajouté ${t.about}.`,
    personLeft: (t) => `${t.about ?? t.by} a quitté l’ensemble${t.about === null ? '' : ` ; noté par ${t.by}`}.`,
    personBack: (t) => `${t.by} a laissé ${t.about} revenir.`,
    roleGiven: (t) => `${t.by} a fait ${t.about ?? t.by} bibliothécaire.`,
    roleTaken: (t) => `${t.about ?? t.by} n’est plus bibliothécaire ; noté par ${t.by}.`,
    becameMember: (t) => `${t.by} a fait ${t.about} membre.`,
    becameDeputy: (t) => `${t.by} a fait ${t.about} remplaçant.`,
    dataHandedOut: (t) => `${whose(t)} a emporté ce qui est gardé sur sa personne.`,
    erased: (t) => (t.about === null ? 'Quelqu’un d’autrefois s’est fait effacer.' : `${t.by} a effacé quelqu’un qui était parti.`),
    ensembleNamed: (t) => `${t.by} a appelé l’ensemble ${t.facts.name}.`,
    sectionAdded: (t) => `${t.by} a ajouté le pupitre ${t.facts.section}.`,
    seatingChanged: (t) => `${t.by} a placé ${t.facts.section}${t.facts.programme ? ` pour ${t.facts.programme}` : ''}.`,
    settingsChanged: (t) => `${t.by} a changé les nombres des lunettes pour ${t.facts.section}.`,
    programmeAdded: (t) => `${t.by} a ajouté le programme ${t.facts.programme}.`,
    programmeChanged: (t) => `${t.by} a changé le programme ${t.facts.programme}.`,
    partAssigned: (t) => (t.facts.section ? `${t.by} a donné ${part(t.facts)} à ${t.facts.section}.` : `${t.by} a ôté ${part(t.facts)} des pupitres.`),
    workLaid: (t) => `${t.by} a posé ${t.facts.work} au Rayon.`,
    filesLaid: (t) => `${t.by} a ajouté des parties à ${t.facts.work}.`,
    editionLaid: (t) => `${t.by} a posé une édition corrigée sur ${t.facts.work}.`,
    setKept: (t) => `${t.by} a mis de côté les signes de ${t.facts.work}.`,
    archiveTakenIn: (t) => `${t.by} a reçu ${t.facts.work} dans les archives.`,
    handedOut: (t) => (t.facts.what === 'archive' ? `${t.by} a emporté les archives.` : `${t.by} a reçu ${part(t.facts)} (${t.facts.what}).`),
  },
};
