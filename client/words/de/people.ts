import type { TrailFacts } from '../../../core/agreement/wire/trail.ts';
import type { Words } from '../en.ts';
import type { Told } from '../people.ts';
import { listed } from './german.ts';

const part = ({ part: name, work }: TrailFacts): string => [name, work].filter(Boolean).join(' aus ');
const whose = ({ by, about }: Told): string => (about === null ? by : about);
const ways: Record<string, string> = { link: 'mit Link', invitation: 'mit Einladung', letter: 'per Mail', password: 'mit Passwort', identity: 'über die Anmeldung des Hauses' };
const way = ({ way: how }: TrailFacts): string => (how ? ` ${ways[how] ?? how}` : '');

export const people: Words['people'] = {
  ensemble: 'Ensemble',
  looked: (name) => `${name} liegt offen.`,
  rename: 'so nennen',
  renamed: (name) => `Das Ensemble heißt jetzt ${name}.`,
  member: 'Mitglied',
  deputy: 'Aushilfe',
  leads: (sections) => `führt ${listed(sections)}`,
  sits: (sections) => listed(sections),
  deputiesIn: (programmes) => (programmes.length ? `Aushilfe in ${listed(programmes)}` : 'Aushilfe, noch in keinem Programm'),
  isDeputy: 'Aushilfe: nur einzelne Programme, jedes bis zu seinem letzten Tag',
  giveRole: 'auch zur Notenbibliothek machen',
  takeRole: 'nicht mehr Notenbibliothek',
  makeMember: 'zum Mitglied machen',
  makeDeputy: 'zur Aushilfe machen',
  signOut: 'überall abmelden',
  signOutSure: (name) => `Was ${name} hier offen hat, endet sofort, und ausgegebene Links öffnen nichts mehr. Noch nicht gesendete Zeilen warten auf dem Gerät.`,
  signedOut: (name, ended) => `${ended ? `${name} ist abgemeldet.` : `${name} war nicht angemeldet.`} Herein geht es wieder mit einem neuen Link oder auf dem eigenen Weg.`,
  leaves: 'verlässt das Ensemble',
  leavesSure: (name) => `${name} geht: Die Plätze werden frei, und es öffnet sich nichts mehr. Was geschrieben wurde, behält den Namen.`,
  yourself: 'Das sind Sie selbst.',
  sure: 'ja, so ist es',
  rather: 'lieber nicht',
  left: (name) => `${name} ist nicht mehr dabei. Die Plätze sind frei: Sehen Sie bei den Gruppen nach. Der Name steht unter denen, die gegangen sind.`,
  changed: (name, what) => `${name} ist jetzt ${what}.`,
  gone: 'Wer gegangen ist',
  goneOn: (day) => `gegangen am ${day}`,
  back: 'wieder dabei',
  isBack: (name) => `${name} ist wieder dabei, als Mitglied. Geben Sie einen Platz in einer Gruppe.`,
  over: 'Sie sind für einzelne Programme hier, und gerade läuft keines davon. Die Bibliothek setzt Sie ins nächste.',
};

export const mine: Words['mine'] = {
  title: 'Was über mich aufbewahrt wird',
  what: 'Ihr Name, Ihre Ensembles und Plätze, Ihre Hand, die Adresse für Briefe, Ihre Anmeldungen, wie weit Sie gelesen haben, und was Sie geschrieben haben: Vorschläge, Stimmen, Bemerkungen, falsche Noten. Wer was getan hat, lesen Bibliothek und Stimmführung; Ihre Hand und Ihre Adresse nur Sie.',
  fetch: 'alles mitnehmen, in einer Datei',
  erase: 'Mich löschen lassen',
  eraseWhat: 'Ihr Name wird überall zu „Former player“, auch in früheren Spielzeiten. Hand, Adresse, Anmeldungen und Plätze sind weg; Eintragungen und Stimmen bleiben, ohne Namen. Das lässt sich nicht zurücknehmen. Was andere selbst getippt haben, bleibt, und frühere Sicherungen enthalten den Namen, bis sie weggeworfen werden.',
  eraseOther: (name) => `${name} wird überall zu „Former player“. Eintragungen und Stimmen bleiben, ohne Namen. Das lässt sich nicht zurücknehmen; frühere Sicherungen enthalten den Namen, bis sie weggeworfen werden.`,
  type: (name) => `Tippen Sie ${name}`,
  comments: 'auch, was in Bemerkungen gesagt wurde',
  do: 'endgültig löschen',
  erased: 'Gelöscht. Die Eintragungen bleiben, der Name ist weg.',
};

export const trail: Words['trail'] = {
  title: 'Was hier getan wurde',
  person: 'Wer',
  kind: 'Was',
  everybody: 'alle',
  everything: 'alles',
  none: 'Davon wurde nichts getan.',
  older: 'weiter zurück',
  library: 'Bowline',
  kinds: {
    signedIn: 'hereingekommen', signInFailed: 'nicht hereingekommen', signedOut: 'abgemeldet', sessionEnded: 'Anmeldung beendet', wayInSet: 'Zugang eingerichtet', wayInRemoved: 'Zugang entfernt', linkMade: 'Link gemacht', linkWithdrawn: 'Link zurückgenommen',
    personAdded: 'dazugekommen', personLeft: 'gegangen', personBack: 'zurückgekommen', roleGiven: 'Rolle gegeben', roleTaken: 'Rolle genommen', becameMember: 'Mitglied geworden', becameDeputy: 'Aushilfe geworden', dataHandedOut: 'eigene Daten mitgenommen', erased: 'gelöscht',
    ensembleNamed: 'Ensemble benannt', sectionAdded: 'Gruppe dazu', seatingChanged: 'Sitzordnung', settingsChanged: 'Zahlen der Prüfung',
    programmeAdded: 'Programm dazu', programmeChanged: 'Programm geändert', partAssigned: 'Stimme einer Gruppe gegeben', workLaid: 'Partitur gelegt', filesLaid: 'weitere Stimmen', editionLaid: 'berichtigte Ausgabe', setKept: 'Eintragungen aufgehoben', archiveTakenIn: 'Archiv aufgenommen', handedOut: 'ausgegeben',
  },
  told: {
    signedIn: (t) => `${whose(t)} kam herein${way(t.facts)}.`,
    signInFailed: (t) => `Jemand wollte als ${whose(t)} herein${way(t.facts)} und kam nicht herein.`,
    signedOut: (t) => `${whose(t)} meldete sich ab.`,
    sessionEnded: (t) => (t.about === null ? `${t.by} beendete eine eigene Anmeldung.` : `${t.by} beendete eine Anmeldung von ${t.about}.`),
    wayInSet: (t) => `${whose(t)} richtete einen Zugang ein${way(t.facts)}.`,
    wayInRemoved: (t) => `${whose(t)} entfernte einen Zugang${way(t.facts)}.`,
    linkMade: (t) => `${t.by} machte einen Anmeldelink${t.about === null ? '' : ` für ${t.about}`}.`,
    linkWithdrawn: (t) => `${t.by} nahm einen Link zurück${t.about === null ? '' : ` (${t.about})`}.`,
    personAdded: (t) => `${t.by} nahm ${t.about} dazu.`,
    personLeft: (t) => `${t.about ?? t.by} hat das Ensemble verlassen${t.about === null ? '' : `; eingetragen von ${t.by}`}.`,
    personBack: (t) => `${t.by} ließ ${t.about} wieder herein.`,
    roleGiven: (t) => `${t.by} gab ${t.about ?? t.by} die Notenbibliothek.`,
    roleTaken: (t) => `${t.about ?? t.by} ist nicht mehr Notenbibliothek; eingetragen von ${t.by}.`,
    becameMember: (t) => `${t.by} machte ${t.about} zum Mitglied.`,
    becameDeputy: (t) => `${t.by} machte ${t.about} zur Aushilfe.`,
    dataHandedOut: (t) => `${whose(t)} nahm mit, was über die eigene Person aufbewahrt wird.`,
    erased: (t) => (t.about === null ? 'Jemand von früher ließ sich löschen.' : `${t.by} löschte jemanden, der gegangen war.`),
    ensembleNamed: (t) => `${t.by} nannte das Ensemble ${t.facts.name}.`,
    sectionAdded: (t) => `${t.by} legte die Gruppe ${t.facts.section} an.`,
    seatingChanged: (t) => `${t.by} setzte ${t.facts.section}${t.facts.programme ? ` für ${t.facts.programme}` : ''}.`,
    settingsChanged: (t) => `${t.by} änderte die Zahlen der Prüfung für ${t.facts.section}.`,
    programmeAdded: (t) => `${t.by} legte das Programm ${t.facts.programme} an.`,
    programmeChanged: (t) => `${t.by} änderte das Programm ${t.facts.programme}.`,
    partAssigned: (t) => (t.facts.section ? `${t.by} gab ${part(t.facts)} an ${t.facts.section}.` : `${t.by} nahm ${part(t.facts)} von den Pulten.`),
    workLaid: (t) => `${t.by} legte ${t.facts.work} ins Regal.`,
    filesLaid: (t) => `${t.by} legte Stimmen zu ${t.facts.work}.`,
    editionLaid: (t) => `${t.by} legte eine berichtigte Ausgabe über ${t.facts.work}.`,
    setKept: (t) => `${t.by} hob die Eintragungen von ${t.facts.work} auf.`,
    archiveTakenIn: (t) => `${t.by} nahm ${t.facts.work} ins Archiv auf.`,
    handedOut: (t) => (t.facts.what === 'archive' ? `${t.by} nahm das Archiv mit.` : `${t.by} bekam ${part(t.facts)} (${t.facts.what}).`),
  },
};
