import type { Words } from '../en.ts';

/** What the rules say, by rule and message. */
export const findings = {
  'bow/retake-in-time': { tooFast: 'A {where} la ripresa d’arco viene {seconds} s dopo l’inizio dell’arcata precedente{tempo} ({who}); suonare e tornare richiedono circa {needed} s. Suoni le note come vengono, o nella stessa arcata.' },
  'bow/chord-up': { up: 'A {where} un accordo di {count} note comincia in su dopo una pausa ({who}). Giri il segno, se nulla lo impedisce.' },
  'bow/same-music': { differs: 'A {where} su {pitch} c’è {bow}, ma {other} nella stessa musica di {before}. Prenda la stessa arcata per entrambe, o lasci se la differenza è voluta.' },
  'bow/change-past-note': { past: 'A {where} un cambio d’arco cade {after} dopo l’inizio di una nota che dura {length} ({who}). Lo sposti nella nota o sulla seguente.' },
  'bow/plucked': {
    sign: 'A {where} una nota porta un segno d’arco ma si suona ancora pizzicata ({who}). Scriva arco, se si vuole l’arco, o sposti il segno.',
    printedSign: 'A {where} un segno d’arco è stampato su una nota ancora pizzicata. Se lì si vuole arco, lo scriva, così nessuno deve chiedere.',
    manner: 'A {where} una nota porta un segno di condotta dell’arco ma si suona ancora pizzicata ({who}). Sposti il segno su una nota con l’arco, o lo cancelli.',
  },
  'bow/change-in-tremolo': {
    change: 'A {where} un cambio d’arco cade in un tremolo ({who}), dove l’arco cambia di continuo. Lo cancelli, o lo sposti su una nota tenuta.',
    hook: 'A {where} un tremolo sta nella stessa arcata di prima ({who}), ma non ha un’arcata sua. Cancelli o sposti il segno.',
  },
  'bow/same-direction': {
    twice: 'A {where} dopo {bow} viene ancora {bow} ({who}). Scriva ripresa o stessa arcata, o giri uno dei segni.',
    printedTwice: 'A {where} {bow} è stampata due volte di seguito. Se si vuole ripresa o stessa arcata, lo scriva, così nessuno deve chiedere.',
    miscounted: 'A {where}, dopo {between}, l’arco arriva con {other}, ma è segnata {bow} ({who}). Scriva per via una ripresa, la stessa arcata o una legatura, o giri il segno.',
  },
  'bow/outlasts-bow': {
    needsMore: 'Da {where} un’arcata deve durare {seconds} s in {dynamic}{tempo}, dove un’arcata dura circa {bow} s ({who}). Scriva un cambio d’arco, o divida la legatura.',
    outOfReach: 'Da {where} un’arcata dovrebbe durare {seconds} s in {dynamic}{tempo}, dove un’arcata dura circa {bow} s ({who}): così non si può suonare. Scriva cambi d’arco, o divida la legatura.',
  },
  'bow/hook-apart': {
    alone: 'A {where} una nota sta nella stessa arcata, ma entro {rest} s prima e dopo nulla si suona con l’arco ({who}). Sposti il segno, o lo cancelli.',
    otherWay: 'A {where} una nota nella stessa arcata è segnata {bow}, ma l’arcata precedente è {other} ({who}). Giri uno dei segni, o cancelli la stessa arcata.',
  },
  'notation/both-bows-printed': { both: 'A {where} su una nota sono stampate arcata in su e in giù ({who}). Segni quella che suona la sua sezione.' },
  'notation/bow-inside-slur': {
    insideSlur: 'A {where} {bow} sta sotto una legatura che continua ({who}). Divida la legatura o scriva un cambio d’arco, se lì l’arco gira, o cancelli il segno.',
    tiedOver: 'A {where} {bow} sta su una nota legata di valore che già suona ({who}). Scriva un cambio d’arco, se lì l’arco gira, o sposti il segno.',
  },
  'notation/slur-mark-nowhere': {
    splitsNothing: 'A {where} una legatura è divisa su una nota a cui nessuna arriva ({who}). Sposti la divisione sotto una legatura, o la cancelli.',
    joinsNothing: 'A {where} una legatura è unita a ciò che segue, ma non c’è nulla da unire ({who}). Lo sposti sull’ultima nota di una legatura, o lo cancelli.',
    joinsRest: 'A {where} una legatura è unita sopra una pausa ({who}): lì l’arco si ferma, dunque sono due arcate. Scriva stessa arcata, se l’arco va avanti nello stesso verso, o lo cancelli.',
  },
  'notation/retake-inside-slur': {
    insideSlur: 'A {where} una ripresa d’arco sta sotto una legatura ({who}). La divida lì, o sposti il segno al suo inizio.',
    tiedOver: 'A {where} una ripresa d’arco sta su una nota legata di valore ({who}): l’arco non può lasciare la corda. Divida la legatura di valore, o sposti il segno.',
  },
  'notation/marks-disagree': {
    hookAndRetake: 'A {where} una nota porta stessa arcata e ripresa ({who}): l’arco non può restare e insieme tornare. Cancelli uno dei due.',
    hookAndSplit: 'A {where} una nota sta nella stessa arcata e insieme ne comincia una nuova ({who}). Cancelli la stessa arcata, o la divisione o il cambio.',
    joinThenNew: 'A {where} la nota precedente è unita a questa, che comincia una nuova arcata ({who}). Cancelli l’unione, o ciò che comincia l’arcata.',
  },
  'notation/string-words': { other: 'A {where} {pitch} è segnato per la corda {string} ({who}), ma le parole sopra chiedono la corda {words}. Scriva dove finiscono le parole, o dia alla nota quella corda.' },
  'notation/mark-on-unplayed': {
    rest: 'A {where} un segno sta su una pausa ({who}). Lo sposti sulla nota a cui è destinato.',
    cue: 'A {where} un segno sta su note di richiamo che questa parte non suona ({who}). Lo sposti su una nota della parte.',
    hidden: 'A {where} un segno sta su una nota che la stampa non mostra ({who}); nessuno lo vedrà. Lo sposti su una nota visibile.',
  },
  'fingering/shift-in-time': {
    tooFast: 'A {where} {pitch} con il dito {finger} chiede un cambio di posizione di circa {mm} mm, che richiede circa {needs} ms; ce ne sono {available}. Cambi prima, estenda, o prenda un’altra corda.',
    hard: 'A {where} {pitch} con il dito {finger} chiede un cambio di posizione di circa {mm} mm in {available} ms, e ne richiede circa {needs}. Un cambio anticipato lascerebbe più tempo.',
  },
  'fingering/hand-order': { crossed: 'A {where} {pitch} porta il dito {finger} tra due note della stessa posizione dove non è in ordine: la mano andrebbe e tornerebbe subito. Forse si vuole un altro dito.' },
  'fingering/substitution': {
    same: 'A {where} un dito deve sostituire sé stesso su una nota ({who}). Lo scriva una volta, o quello che sostituisce.',
    open: 'A {where} un dito e la corda vuota devono sostituirsi su una nota ({who}). Prema la nota dall’inizio, o la lasci vuota.',
  },
  'fingering/exposed-slide': { slides: '{Who}: il cambio di posizione di circa {distance} verso {pitch} a {where} sta sotto una legatura su una sola corda, e lo scivolamento si sente. Se non è voluto, cambi su un’altra nota, al cambio d’arco, o prenda un’altra corda.' },
  'fingering/thumb': {
    holdsTheNeck: 'A {where} {pitch} è segnato per il pollice, che su questo strumento tiene il manico. Dia alla nota un altro dito.',
    low: 'A {where} {pitch} è segnato per il pollice così in basso sulla corda che sta dietro il manico. Prenda un altro dito o una corda più grave.',
  },
  'fingering/same-music': { differs: '{Who}: a {where} {pitch} porta il dito {finger}, ma il dito {other} nella stessa musica di {before}. Prenda una sola diteggiatura per entrambe, o lasci se la differenza è voluta.' },
  'fingering/tied-over': {
    again: 'A {where} {pitch} è legato di valore e porta ancora il dito {finger}. Non dice nulla di nuovo: lo cancelli, o lo metta sulla nota voluta.',
    otherString: 'A {where} {pitch} è legato di valore e segnato per la corda {string}, ma è cominciato sulla corda {began}. Una nota tenuta non può cambiare corda: separi la legatura, o cominci sulla corda {string}.',
  },
  'fingering/trill-finger': { fourth: 'A {where} c’è un trillo su una nota con il 4º dito ({who}): non resta un dito per trillare. Prenda un dito più basso in una posizione più alta.' },
  'fingering/one-hand': {
    oneString: 'A {where} {low} e {high} cadono sulla stessa corda e non possono suonare insieme. Dia a una nota un’altra corda, o divida.',
    apart: 'A {where} {low} e {high} stanno su corde non vicine; un arco non può tenerle entrambe. Scelga corde vicine, o divida.',
    oneFinger: 'A {where} {low} e {high} portano lo stesso dito in due punti. Ne dia un altro a una delle note, o divida.',
    crossed: 'A {where} le dita si incrociano su {low} e {high}: il più alto starebbe dietro il più basso. Le scambi, o scelga altre corde.',
    wide: 'A {where} {low} e {high} distano {mm} mm con queste dita. È un’estensione più ampia della maggior parte delle diteggiature stampate: altre dita, altre corde, o divida. Dolore, intorpidimento o perdita di controllo: si fermi e consulti un medico.',
  },
  'fingering/zero-is-open': {
    stoppedPitch: 'A {where} {pitch} porta uno 0 sulla corda {string}, ma questa corda vuota suona {open}. Dia alla nota un altro dito o un’altra corda.',
    noOpenString: 'A {where} {pitch} porta uno 0, ma nessuna corda vuota suona così. Dia alla nota un altro dito, o la segni come armonico, se lo è.',
    perhapsHarmonic: 'A {where} {pitch} porta uno 0 e non è una corda vuota; come armonico il suono appartiene alla corda {string}. Se è voluto, lo segni come armonico.',
  },
  'fingering/reach': { wide: 'A {where} l’estensione verso {pitch} chiede {mm} mm dal dito {from} al dito {to}. È più della maggior parte delle diteggiature stampate: lasci che la mano segua, o prenda un’altra corda. Dolore, intorpidimento o perdita di controllo: si fermi e consulti un medico.' },
  'fingering/harmonic-node': {
    noString: 'A {where} {pitch} è segnato come armonico, ma nessuna corda ne ha lì, né di suono né al tocco. Lo scriva come armonico artificiale, o prema la nota.',
    noNode: 'A {where} l’armonico artificiale tocca {pitch}, {distance} semitoni sopra il suono premuto, dove non c’è un nodo. Tocchi una terza, una quarta o una quinta sopra.',
  },
  'fingering/pitch-on-string': {
    belowString: 'A {where} {pitch} è segnato per la corda {string}, ma questa corda vuota comincia da {open}. Scelga una corda più grave.',
    beyondFingerboard: 'A {where} {pitch} è segnato per la corda {string}, dove il suono è oltre la tastiera. Scelga una corda più acuta, o lo segni come armonico.',
    belowInstrument: 'A {where} {pitch} porta un dito ma sta sotto la corda più grave. Se la sua corda più grave scende così, lo stabilisca per la sezione.',
    noSuchHarmonic: 'A {where} {pitch} è segnato come armonico sulla corda {string}, che lì non ne ha. Scelga un’altra corda, o lo scriva come armonico artificiale.',
  },
  'fingering/open-strings': {
    avoided: 'A {where} {pitch} è segnato a vuoto, e questa sezione evita le corde vuote. Prema il suono sulla corda {string}, o lo lasci come eccezione.',
    wanted: 'A {where} {pitch} è preso con il dito {finger}, e questa sezione vuole le corde vuote. Lo suoni a vuoto, o lo lasci come eccezione.',
  },
  'desk/partners-bowed-apart': { apart: '{Who}: a {where} uno ha arcata in su e l’altro in giù. Giri uno dei segni.' },
  'desk/partners-shift-together': { together: '{Who}: tutti e due cambiano posizione di circa {distance} sulla stessa nota, {pitch} a {where}, sotto una legatura. Uno potrebbe cambiare su un’altra nota o restare su un’altra corda.' },
  'desk/open-beside-stopped': { mixed: '{Who}: a {where} uno suona a vuoto una nota di {seconds} s, l’altro la preme. Dia a entrambi la stessa cosa.' },
  'desk/partners-change-together': {
    sameMoment: '{Who}: tutti e due cambiano arco nello stesso istante a {where}. Sposti uno dei cambi.',
    tooClose: '{Who}: i due cambiano arco a {seconds} s l’uno dall’altro a {where}. Tenga almeno {least} s di distanza.',
    sameSubdivision: '{Who}: i due cambiano arco sulla stessa suddivisione del tempo a {where}. Sposti uno dei cambi su un’altra.',
  },
  'section/change-on-barline': { onBarline: '{Who}: il cambio d’arco di un passo sfalsato cade sulla stanghetta di {where}. Lo sposti via dal tempo, nella battuta prima o dopo.' },
  'section/arrives-apart': { apart: '{Who} e gli altri arrivano dopo il passo sfalsato, a {where}, con arcate contrarie. Segni quell’arcata per tutti, o dia a una parte un cambio in più.' },
  'section/unison-bowed-against': {
    unison: 'A {where} su {pitch} comincia {bow}, mentre {other}, con le stesse note, {theirs}. Giri una delle due.',
    rhythm: 'A {where} su {pitch} comincia {bow}, mentre {other}, con lo stesso ritmo e le stesse legature, {theirs}. Giri una delle due, o lasci se è voluto.',
    counted: 'A {where} l’arco arriva su {pitch} con {bow}, in {other} nello stesso momento con {theirs}. Segni un’arcata in una delle due, perché vadano insieme.',
    printed: 'A {where} su {pitch} è stampata {bow}, in {other} nello stesso momento {theirs}. Ne scelga una.',
  },
  'section/unison-slurred-otherwise': {
    split: 'A {where} su {pitch} comincia una nuova arcata, mentre {other} nello stesso momento restano nella vecchia. Segni la legatura allo stesso modo in entrambe, o lasci se è voluto.',
    joined: 'A {where} l’arcata prosegue oltre {pitch}, mentre {other} nello stesso momento ne cominciano una nuova. Segni la legatura allo stesso modo in entrambe, o lasci se è voluto.',
  },
  'section/bowed-apart': { apart: 'A {where} {up} ha arcata in su e {down} in giù. Giri i segni di una parte, se non si vogliono entrambe.' },
  'section/too-many-at-once': { crowd: 'A {where} {count} cambiano arco entro {within} s ({who}); ne restano nascosti al massimo {allowed}. Sposti alcuni di questi cambi.' },
  'parts/divided-bowed-against': { against: 'A {where} le due voci vanno insieme ma con arcate contrarie, sopra {upper} e sotto {lower} ({who}). Giri uno dei segni.' },
  'parts/pizz-in-time': {
    toPizz: 'A {where} pizz. viene {seconds} s dopo l’inizio dell’ultima nota con l’arco{tempo}. Stabilisca chi lascia quella nota, o la divida per leggii.',
    toArco: 'A {where} arco viene {seconds} s dopo l’ultima nota pizzicata{tempo}. Stabilisca chi lascia una nota, o divida per leggii.',
  },
  'parts/mute-in-time': {
    on: 'A {where} restano {seconds} s di silenzio per mettere le sordine{tempo}; una sezione ne richiede circa {needed}. Stabilisca quali leggii le mettono prima.',
    off: 'A {where} restano {seconds} s di silenzio per togliere le sordine{tempo}; una sezione ne richiede circa {needed}. Stabilisca quali leggii le tolgono prima.',
  },
} satisfies Words['findings'];
