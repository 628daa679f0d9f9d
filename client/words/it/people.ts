import type { TrailFacts } from '../../../core/agreement/wire/trail.ts';
import type { Words } from '../en.ts';
import type { Told } from '../people.ts';
import { listed } from './italian.ts';

const part = ({ part: name, work }: TrailFacts): string => [name, work].filter(Boolean).join(', ');
const whose = ({ by, about }: Told): string => (about === null ? by : about);
const ways: Record<string, string> = { link: 'con un collegamento', invitation: 'con un invito', letter: 'per posta', password: 'con la parola d’ordine', identity: 'con l’ingresso della casa' };
const way = ({ way: how }: TrailFacts): string => (how ? ` ${ways[how] ?? how}` : '');

export const people: Words['people'] = {
  ensemble: 'Complesso',
  looked: (name) => `${name} è aperto.`,
  rename: 'chiamarlo così',
  renamed: (name) => `Il complesso si chiama ora ${name}.`,
  member: 'membro',
  deputy: 'aggiunto',
  leads: (sections) => `guida ${listed(sections)}`,
  sits: (sections) => listed(sections),
  deputiesIn: (programmes) => (programmes.length ? `aggiunto in ${listed(programmes)}` : 'aggiunto, ancora in nessun programma'),
  isDeputy: 'aggiunto: solo singoli programmi, ognuno fino al suo ultimo giorno',
  giveRole: 'fare anche archivista',
  takeRole: 'non più archivista',
  makeMember: 'fare membro',
  makeDeputy: 'fare aggiunto',
  signOut: 'chiudi i suoi accessi',
  signOutSure: (name) => `Ciò che ${name} ha aperto qui si chiude subito, e i link consegnati non aprono più nulla. Le righe non ancora inviate aspettano sul suo dispositivo.`,
  signedOut: (name, ended) => `${ended ? `Gli accessi di ${name} sono chiusi.` : `${name} non aveva accessi aperti.`} Si rientra con un nuovo link o per una via propria.`,
  leaves: 'lascia il complesso',
  leavesSure: (name) => `${name} se ne va: i suoi posti sono liberi e non apre più nulla. Ciò che è scritto conserva il nome.`,
  yourself: 'È Lei.',
  sure: 'sì, è così',
  rather: 'meglio di no',
  left: (name) => `${name} se n’è andato. I suoi posti sono liberi: guardi le sezioni. Il nome sta fra chi se n’è andato.`,
  changed: (name, what) => `${name} è ora ${what}.`,
  gone: 'Chi se n’è andato',
  goneOn: (day) => `andato il ${day}`,
  back: 'di nuovo qui',
  isBack: (name) => `${name} è di nuovo qui, come membro. Gli dia un posto in una sezione.`,
  over: 'È qui per singoli programmi, e ora nessuno è in corso. L’archivista La metterà nel prossimo.',
};

export const mine: Words['mine'] = {
  title: 'Che cosa si conserva di me',
  what: 'Il Suo nome, i complessi e i posti, la mano, l’indirizzo per le lettere, gli ingressi, fin dove ha letto, e ciò che ha scritto: proposte, voti, osservazioni, note sbagliate. Chi ha fatto che cosa lo leggono l’archivista e la prima parte; mano e indirizzo soltanto Lei.',
  fetch: 'portarlo con sé, in un documento',
  erase: 'Farmi cancellare',
  eraseWhat: 'Il Suo nome diventa ovunque «Former player», anche nelle stagioni passate. Mano, indirizzo, ingressi e posti spariscono; segni e voti restano, senza nome. Non si torna indietro. Ciò che altri hanno scritto di loro pugno resta, e le copie di riserva di prima tengono il nome finché non si buttano.',
  eraseOther: (name) => `${name} diventa ovunque «Former player». Segni e voti restano, senza nome. Non si torna indietro; le copie di riserva di prima tengono il nome finché non si buttano.`,
  type: (name) => `Scriva ${name}`,
  comments: 'anche ciò che è detto nelle osservazioni',
  do: 'cancellare per sempre',
  erased: 'Cancellato. I segni restano, il nome non c’è più.',
};

export const trail: Words['trail'] = {
  title: 'Che cosa si è fatto qui',
  person: 'Chi',
  kind: 'Che cosa',
  everybody: 'tutti',
  everything: 'tutto',
  none: 'Nulla di ciò è stato fatto.',
  older: 'più indietro',
  library: 'Bowline',
  kinds: {
    signedIn: 'entrato', signInFailed: 'non entrato', signedOut: 'uscito', sessionEnded: 'ingresso chiuso', wayInSet: 'accesso messo', wayInRemoved: 'accesso tolto', linkMade: 'collegamento fatto', linkWithdrawn: 'collegamento ritirato',
    personAdded: 'aggiunto alla lista', personLeft: 'andato', personBack: 'tornato', roleGiven: 'incarico dato', roleTaken: 'incarico tolto', becameMember: 'diventato membro', becameDeputy: 'diventato aggiunto', dataHandedOut: 'propri dati portati via', erased: 'cancellato',
    ensembleNamed: 'complesso chiamato', sectionAdded: 'sezione nuova', seatingChanged: 'disposizione', settingsChanged: 'numeri degli occhiali',
    programmeAdded: 'programma nuovo', programmeChanged: 'programma cambiato', partAssigned: 'parte data a una sezione', workLaid: 'partitura posata', filesLaid: 'altre parti', editionLaid: 'edizione corretta', setKept: 'segni messi da parte', archiveTakenIn: 'archivio accolto', handedOut: 'consegnato',
  },
  told: {
    signedIn: (t) => `${whose(t)} è entrato${way(t.facts)}.`,
    signInFailed: (t) => `Qualcuno ha provato a entrare come ${whose(t)}${way(t.facts)}, senza riuscirci.`,
    signedOut: (t) => `${whose(t)} è uscito.`,
    sessionEnded: (t) => (t.about === null ? `${t.by} ha chiuso un proprio ingresso.` : `${t.by} ha chiuso un ingresso di ${t.about}.`),
    wayInSet: (t) => `${whose(t)} ha messo un accesso${way(t.facts)}.`,
    wayInRemoved: (t) => `${whose(t)} ha tolto un accesso${way(t.facts)}.`,
    linkMade: (t) => `${t.by} ha fatto un collegamento d’ingresso${t.about === null ? '' : ` per ${t.about}`}.`,
    linkWithdrawn: (t) => `${t.by} ha ritirato un collegamento${t.about === null ? '' : ` di ${t.about}`}.`,
    personAdded: (t) => `${t.by} ha aggiunto ${t.about}.`,
    personLeft: (t) => `${t.about ?? t.by} ha lasciato il complesso${t.about === null ? '' : `; annotato da ${t.by}`}.`,
    personBack: (t) => `${t.by} ha fatto tornare ${t.about}.`,
    roleGiven: (t) => `${t.by} ha fatto ${t.about ?? t.by} archivista.`,
    roleTaken: (t) => `${t.about ?? t.by} non è più archivista; annotato da ${t.by}.`,
    becameMember: (t) => `${t.by} ha fatto ${t.about} membro.`,
    becameDeputy: (t) => `${t.by} ha fatto ${t.about} aggiunto.`,
    dataHandedOut: (t) => `${whose(t)} ha portato con sé ciò che si conserva di lui.`,
    erased: (t) => (t.about === null ? 'Qualcuno di un tempo si è fatto cancellare.' : `${t.by} ha cancellato qualcuno che se n’era andato.`),
    ensembleNamed: (t) => `${t.by} ha chiamato il complesso ${t.facts.name}.`,
    sectionAdded: (t) => `${t.by} ha aggiunto la sezione ${t.facts.section}.`,
    seatingChanged: (t) => `${t.by} ha disposto ${t.facts.section}${t.facts.programme ? ` per ${t.facts.programme}` : ''}.`,
    settingsChanged: (t) => `${t.by} ha cambiato i numeri degli occhiali per ${t.facts.section}.`,
    programmeAdded: (t) => `${t.by} ha aggiunto il programma ${t.facts.programme}.`,
    programmeChanged: (t) => `${t.by} ha cambiato il programma ${t.facts.programme}.`,
    partAssigned: (t) => (t.facts.section ? `${t.by} ha dato ${part(t.facts)} a ${t.facts.section}.` : `${t.by} ha tolto ${part(t.facts)} dai leggii.`),
    workLaid: (t) => `${t.by} ha posato ${t.facts.work} sullo scaffale.`,
    filesLaid: (t) => `${t.by} ha aggiunto parti a ${t.facts.work}.`,
    editionLaid: (t) => `${t.by} ha posato un’edizione corretta su ${t.facts.work}.`,
    setKept: (t) => `${t.by} ha messo da parte i segni di ${t.facts.work}.`,
    archiveTakenIn: (t) => `${t.by} ha accolto ${t.facts.work} nell’archivio.`,
    handedOut: (t) => (t.facts.what === 'archive' ? `${t.by} ha portato con sé l’archivio.` : `${t.by} ha ricevuto ${part(t.facts)} (${t.facts.what}).`),
  },
};
