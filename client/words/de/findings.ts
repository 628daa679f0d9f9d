import type { Words } from '../en.ts';

/** What the rules say, by rule and message. */
export const findings = {
  'bow/retake-in-time': { tooFast: 'In {where} kommt das Neuansetzen {seconds} s nach Beginn des Strichs davor{tempo} ({who}); Spielen und Zurückführen brauchen etwa {needed} s. Spielen Sie die Noten, wie sie kommen, oder hängen Sie sie an.' },
  'bow/chord-up': { up: 'In {where} beginnt ein Akkord aus {count} Noten nach einer Pause im Aufstrich ({who}). Drehen Sie das Zeichen um, wenn nichts dagegen spricht.' },
  'bow/same-music': { differs: 'In {where} steht auf {pitch} {bow}, in derselben Musik von {before} aber {other}. Nehmen Sie für beides einen Strich, oder lassen Sie es, wenn der Unterschied gewollt ist.' },
  'bow/change-past-note': { past: 'In {where} steht ein Bogenwechsel {after} nach Beginn einer Note, die {length} dauert ({who}). Verschieben Sie den Wechsel in die Note oder auf die nächste.' },
  'bow/plucked': {
    sign: 'In {where} trägt eine Note ein Strichzeichen, wird aber noch gezupft ({who}). Schreiben Sie arco, wenn der Bogen gemeint ist, oder verschieben Sie das Zeichen.',
    printedSign: 'In {where} ist über einer noch gezupften Note ein Strichzeichen gedruckt. Wenn dort arco gemeint ist, schreiben Sie es hin, damit niemand fragen muss.',
    manner: 'In {where} trägt eine Note ein Zeichen für die Bogenführung, wird aber noch gezupft ({who}). Verschieben Sie das Zeichen auf eine gestrichene Note, oder radieren Sie es aus.',
  },
  'bow/change-in-tremolo': {
    change: 'In {where} steht ein Bogenwechsel in einem Tremolo ({who}), wo der Bogen ohnehin dauernd wechselt. Radieren Sie ihn aus, oder verschieben Sie ihn auf eine gehaltene Note.',
    hook: 'In {where} ist ein Tremolo an den Strich davor angehängt ({who}), hat aber keinen eigenen Strich. Radieren oder verschieben Sie das Zeichen.',
  },
  'bow/same-direction': {
    twice: 'In {where} folgt {bow} auf {bow} ({who}). Schreiben Sie dort neu ansetzen oder angehängt, oder drehen Sie eines der Zeichen um.',
    printedTwice: 'In {where} ist {bow} zweimal hintereinander gedruckt. Wenn neu ansetzen oder angehängt gemeint ist, schreiben Sie es hin, damit niemand fragen muss.',
    miscounted: 'In {where} kommt der Bogen nach {between} im {other} an, bezeichnet ist aber {bow} ({who}). Schreiben Sie unterwegs neu ansetzen, angehängt oder einen Bindebogen, oder drehen Sie das Zeichen um.',
  },
  'bow/outlasts-bow': {
    needsMore: 'Ab {where} muss ein Bogen {seconds} s in {dynamic}{tempo} reichen, wo ein Bogen etwa {bow} s reicht ({who}). Schreiben Sie einen Bogenwechsel, oder teilen Sie den Bindebogen.',
    outOfReach: 'Ab {where} müsste ein Bogen {seconds} s in {dynamic}{tempo} reichen, wo ein Bogen etwa {bow} s reicht ({who}): so nicht spielbar. Schreiben Sie Bogenwechsel, oder teilen Sie den Bindebogen.',
  },
  'bow/hook-apart': {
    alone: 'In {where} steht angehängt auf einer Note, vor und nach der innerhalb von {rest} s nichts gestrichen wird ({who}). Verschieben Sie das Zeichen, oder radieren Sie es aus.',
    otherWay: 'In {where} ist auf einer angehängten Note {bow} bezeichnet, der Strich davor geht aber im {other} ({who}). Drehen Sie eines der Zeichen um, oder radieren Sie das Anhängen aus.',
  },
  'notation/both-bows-printed': { both: 'In {where} sind auf einer Note Auf- und Abstrich gedruckt ({who}). Bezeichnen Sie den, den Ihre Gruppe spielt.' },
  'notation/bow-inside-slur': {
    insideSlur: 'In {where} steht {bow} unter einem Bindebogen, der weitergeht ({who}). Teilen Sie den Bindebogen oder schreiben Sie einen Bogenwechsel, wenn der Bogen dort wendet, oder radieren Sie das Zeichen aus.',
    tiedOver: 'In {where} steht {bow} auf einer übergebundenen Note, die schon klingt ({who}). Schreiben Sie einen Bogenwechsel, wenn der Bogen dort wendet, oder verschieben Sie das Zeichen.',
  },
  'notation/slur-mark-nowhere': {
    splitsNothing: 'In {where} ist ein Bindebogen auf einer Note geteilt, zu der keiner reicht ({who}). Verschieben Sie die Teilung unter einen Bindebogen, oder radieren Sie sie aus.',
    joinsNothing: 'In {where} ist ein Bindebogen mit dem Folgenden verbunden, aber es gibt nichts zu verbinden ({who}). Verschieben Sie das auf die letzte Note eines Bindebogens, oder radieren Sie es aus.',
    joinsRest: 'In {where} ist ein Bindebogen über eine Pause verbunden ({who}): dort hält der Bogen, es werden also zwei Striche. Schreiben Sie angehängt, wenn der Bogen in derselben Richtung weitergeht, oder radieren Sie es aus.',
  },
  'notation/retake-inside-slur': {
    insideSlur: 'In {where} steht neu ansetzen unter einem Bindebogen ({who}). Teilen Sie ihn dort, oder verschieben Sie das Zeichen an seinen Anfang.',
    tiedOver: 'In {where} steht neu ansetzen auf einer übergebundenen Note ({who}), der Bogen kann die Saite also nicht verlassen. Teilen Sie den Haltebogen, oder verschieben Sie das Zeichen.',
  },
  'notation/marks-disagree': {
    hookAndRetake: 'In {where} steht auf einer Note angehängt und neu ansetzen ({who}): der Bogen kann nicht bleiben und zugleich zurückgeführt werden. Radieren Sie eines aus.',
    hookAndSplit: 'In {where} ist eine Note angehängt und beginnt zugleich einen neuen Bogen ({who}). Radieren Sie das Anhängen aus, oder die Teilung oder den Wechsel.',
    joinThenNew: 'In {where} ist die Note davor mit dieser verbunden, die einen neuen Bogen beginnt ({who}). Radieren Sie das Verbinden aus, oder was den Bogen beginnt.',
  },
  'notation/string-words': { other: 'In {where} ist {pitch} für Saite {string} bezeichnet ({who}), die Worte über der Stelle verlangen Saite {words}. Schreiben Sie, wo die Worte enden, oder geben Sie der Note jene Saite.' },
  'notation/mark-on-unplayed': {
    rest: 'In {where} steht ein Zeichen auf einer Pause ({who}). Verschieben Sie es auf die Note, für die es gedacht ist.',
    cue: 'In {where} steht ein Zeichen auf Stichnoten, die diese Stimme nicht spielt ({who}). Verschieben Sie es auf eine Note der Stimme.',
    hidden: 'In {where} steht ein Zeichen auf einer Note, die der Druck nicht zeigt ({who}); niemand wird es sehen. Verschieben Sie es auf eine sichtbare Note.',
  },
  'fingering/shift-in-time': {
    tooFast: 'In {where} verlangt {pitch} mit Finger {finger} einen Lagenwechsel von etwa {mm} mm, der etwa {needs} ms braucht; da sind {available} ms. Wechseln Sie früher, strecken Sie, oder nehmen Sie eine andere Saite.',
    hard: 'In {where} verlangt {pitch} mit Finger {finger} einen Lagenwechsel von etwa {mm} mm in {available} ms, der etwa {needs} ms braucht. Ein früherer Wechsel ließe mehr Zeit.',
  },
  'fingering/hand-order': { crossed: 'In {where} trägt {pitch} Finger {finger} zwischen zwei Noten einer Lage, wo er nicht in der Reihe liegt: die Hand ginge hin und gleich zurück. Vielleicht ist ein anderer Finger gemeint.' },
  'fingering/substitution': {
    same: 'In {where} soll ein Finger auf einer Note sich selbst ablösen ({who}). Schreiben Sie ihn einmal, oder den, der ablöst.',
    open: 'In {where} sollen ein Finger und die leere Saite auf einer Note einander ablösen ({who}). Greifen Sie die Note von Anfang an, oder lassen Sie sie leer.',
  },
  'fingering/exposed-slide': { slides: '{Who}: der Lagenwechsel um etwa {distance} zu {pitch} in {where} liegt unter einem Bindebogen auf einer Saite, und das Gleiten ist zu hören. Wenn es nicht gewollt ist, wechseln Sie auf einer anderen Note, beim Bogenwechsel, oder nehmen Sie eine andere Saite.' },
  'fingering/thumb': {
    holdsTheNeck: 'In {where} ist {pitch} für den Daumen bezeichnet, der bei diesem Instrument den Hals hält. Geben Sie der Note einen anderen Finger.',
    low: 'In {where} ist {pitch} so tief auf der Saite für den Daumen bezeichnet, dass er hinter dem Hals liegt. Nehmen Sie einen anderen Finger oder eine tiefere Saite.',
  },
  'fingering/same-music': { differs: '{Who}: in {where} trägt {pitch} Finger {finger}, in derselben Musik von {before} Finger {other}. Nehmen Sie für beides einen Fingersatz, oder lassen Sie es, wenn der Unterschied gewollt ist.' },
  'fingering/tied-over': {
    again: 'In {where} ist {pitch} übergebunden und trägt noch einmal Finger {finger}. Das sagt nichts Neues: radieren Sie es aus, oder setzen Sie es auf die gemeinte Note.',
    otherString: 'In {where} ist {pitch} übergebunden und für Saite {string} bezeichnet, begann aber auf Saite {began}. Eine gehaltene Note kann die Saite nicht wechseln: trennen Sie den Haltebogen, oder beginnen Sie auf Saite {string}.',
  },
  'fingering/trill-finger': { fourth: 'In {where} steht ein Triller auf einer Note mit Finger 4 ({who}), zum Trillern bleibt also kein Finger. Nehmen Sie einen tieferen Finger in höherer Lage.' },
  'fingering/one-hand': {
    oneString: 'In {where} fallen {low} und {high} auf dieselbe Saite und können nicht zusammen klingen. Geben Sie einer Note eine andere Saite, oder teilen Sie.',
    apart: 'In {where} liegen {low} und {high} auf Saiten, die keine Nachbarn sind; ein Bogen kann nicht beide halten. Wählen Sie Nachbarsaiten, oder teilen Sie.',
    oneFinger: 'In {where} tragen {low} und {high} denselben Finger an zwei Stellen. Geben Sie einer Note einen anderen, oder teilen Sie.',
    crossed: 'In {where} kreuzen sich die Finger auf {low} und {high}: der höhere stünde hinter dem tieferen. Tauschen Sie sie, oder wählen Sie andere Saiten.',
    wide: 'In {where} liegen {low} und {high} mit diesen Fingern {mm} mm auseinander. Das verlangt eine weitere Streckung als die meisten gedruckten Fingersätze: andere Finger, andere Saiten, oder teilen. Bei Schmerz, Taubheit oder Verlust der Kontrolle: aufhören und ärztlichen Rat holen.',
  },
  'fingering/zero-is-open': {
    stoppedPitch: 'In {where} trägt {pitch} eine 0 auf Saite {string}, aber diese Saite klingt leer als {open}. Geben Sie der Note einen anderen Finger oder eine andere Saite.',
    noOpenString: 'In {where} trägt {pitch} eine 0, aber keine leere Saite klingt so. Geben Sie der Note einen anderen Finger, oder bezeichnen Sie sie als Flageolett, wenn eines gemeint ist.',
    perhapsHarmonic: 'In {where} trägt {pitch} eine 0 und ist keine leere Saite; als Flageolett gehört der Ton zu Saite {string}. Wenn das gemeint ist, bezeichnen Sie ihn als Flageolett.',
  },
  'fingering/reach': { wide: 'In {where} verlangt die Streckung zu {pitch} {mm} mm von Finger {from} zu Finger {to}. Das ist weiter als die meisten gedruckten Fingersätze: lassen Sie die Hand folgen, oder nehmen Sie eine andere Saite. Bei Schmerz, Taubheit oder Verlust der Kontrolle: aufhören und ärztlichen Rat holen.' },
  'fingering/harmonic-node': {
    noString: 'In {where} ist {pitch} als Flageolett bezeichnet, aber keine Saite hat dort eines, klingend oder berührt. Schreiben Sie es als künstliches Flageolett, oder greifen Sie die Note.',
    noNode: 'In {where} berührt das künstliche Flageolett {pitch}, {distance} Halbtöne über dem gegriffenen Ton, wo kein Knoten liegt. Berühren Sie eine Terz, Quarte oder Quinte darüber.',
  },
  'fingering/pitch-on-string': {
    belowString: 'In {where} ist {pitch} für Saite {string} bezeichnet, aber diese Saite beginnt mit leerem {open}. Wählen Sie eine tiefere Saite.',
    beyondFingerboard: 'In {where} ist {pitch} für Saite {string} bezeichnet, wo der Ton jenseits des Griffbretts liegt. Wählen Sie eine höhere Saite, oder bezeichnen Sie ihn als Flageolett.',
    belowInstrument: 'In {where} trägt {pitch} einen Finger, liegt aber unter der tiefsten Saite. Wenn Ihre tiefste Saite so weit reicht, legen Sie das für die Gruppe fest.',
    noSuchHarmonic: 'In {where} ist {pitch} als Flageolett auf Saite {string} bezeichnet, die dort keines hat. Wählen Sie eine andere Saite, oder schreiben Sie es als künstliches Flageolett.',
  },
  'fingering/open-strings': {
    avoided: 'In {where} ist {pitch} leer bezeichnet, und diese Gruppe meidet leere Saiten. Greifen Sie den Ton auf Saite {string}, oder lassen Sie es als Ausnahme.',
    wanted: 'In {where} ist {pitch} mit Finger {finger} gegriffen, und diese Gruppe will leere Saiten. Spielen Sie den Ton leer, oder lassen Sie es als Ausnahme.',
  },
  'desk/partners-bowed-apart': { apart: '{Who}: in {where} hat der eine Aufstrich und der andere Abstrich. Drehen Sie eines der Zeichen um.' },
  'desk/partners-shift-together': { together: '{Who}: beide wechseln die Lage um etwa {distance} auf derselben Note, {pitch} in {where}, unter einem Bindebogen. Einer könnte auf einer anderen Note wechseln oder auf einer anderen Saite bleiben.' },
  'desk/open-beside-stopped': { mixed: '{Who}: in {where} spielt der eine eine Note von {seconds} s leer, der andere greift sie. Geben Sie beiden dasselbe.' },
  'desk/partners-change-together': {
    sameMoment: '{Who}: beide wechseln in {where} im selben Augenblick den Bogen. Verschieben Sie einen der Wechsel.',
    tooClose: '{Who}: die beiden wechseln in {where} im Abstand von {seconds} s den Bogen. Halten Sie mindestens {least} s Abstand.',
    sameSubdivision: '{Who}: die beiden wechseln in {where} auf derselben Unterteilung des Schlags den Bogen. Verschieben Sie einen der Wechsel auf eine andere.',
  },
  'section/change-on-barline': { onBarline: '{Who}: der Bogenwechsel fällt an einer versetzten Stelle auf den Taktstrich von {where}. Verschieben Sie ihn vom Schlag weg, in den Takt davor oder danach.' },
  'section/arrives-apart': { apart: '{Who} und die anderen kommen nach der versetzten Stelle in {where} mit entgegengesetztem Strich an. Bezeichnen Sie diesen Strich für alle, oder geben Sie einem Teil einen Bogenwechsel mehr.' },
  'section/unison-bowed-against': {
    unison: 'In {where} beginnt auf {pitch} ein {bow}, in {other}, mit denselben Noten, ein {theirs}. Drehen Sie einen von beiden um.',
    rhythm: 'In {where} beginnt auf {pitch} ein {bow}, in {other}, mit demselben Rhythmus und denselben Bindebögen, ein {theirs}. Drehen Sie einen von beiden um, oder lassen Sie es, wenn es gemeint ist.',
    counted: 'In {where} kommt der Bogen auf {pitch} im {bow} an, in {other} zur selben Zeit im {theirs}. Bezeichnen Sie in einer von beiden einen Strich, damit beide zusammengehen.',
    printed: 'In {where} ist auf {pitch} {bow} gedruckt, in {other} zur selben Zeit {theirs}. Einigen Sie sich auf einen.',
  },
  'section/unison-slurred-otherwise': {
    split: 'In {where} beginnt auf {pitch} ein neuer Bogen, während {other} zur selben Zeit im alten bleiben. Bezeichnen Sie den Bindebogen in beiden gleich, oder lassen Sie es, wenn es gemeint ist.',
    joined: 'In {where} geht der Bogen über {pitch} weiter, während {other} zur selben Zeit einen neuen beginnen. Bezeichnen Sie den Bindebogen in beiden gleich, oder lassen Sie es, wenn es gemeint ist.',
  },
  'section/bowed-apart': { apart: 'In {where} hat {up} Aufstrich und {down} Abstrich. Drehen Sie die Zeichen eines Teils um, wenn nicht beides gemeint ist.' },
  'section/too-many-at-once': { crowd: 'In {where} wechseln {count} innerhalb von {within} s den Bogen ({who}); verborgen bleiben höchstens {allowed}. Verschieben Sie einige dieser Wechsel.' },
  'parts/divided-bowed-against': { against: 'In {where} gehen die beiden Stimmen zusammen, streichen aber gegeneinander, oben {upper} und unten {lower} ({who}). Drehen Sie eines der Zeichen um.' },
  'parts/pizz-in-time': {
    toPizz: 'In {where} kommt pizz. {seconds} s nach Beginn der letzten gestrichenen Note{tempo}. Vereinbaren Sie, wer diese Note auslässt, oder teilen Sie sie pultweise auf.',
    toArco: 'In {where} kommt arco {seconds} s nach der letzten gezupften Note{tempo}. Vereinbaren Sie, wer eine Note auslässt, oder teilen Sie pultweise auf.',
  },
  'parts/mute-in-time': {
    on: 'In {where} bleiben {seconds} s Stille für das Aufsetzen der Dämpfer{tempo}; eine Gruppe braucht etwa {needed} s. Vereinbaren Sie, welche Pulte zuerst aufsetzen.',
    off: 'In {where} bleiben {seconds} s Stille für das Abnehmen der Dämpfer{tempo}; eine Gruppe braucht etwa {needed} s. Vereinbaren Sie, welche Pulte zuerst abnehmen.',
  },
} satisfies Words['findings'];
