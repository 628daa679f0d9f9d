import { createDeflateRaw } from 'node:zlib';
import { buffer } from 'node:stream/consumers';
import { Readable } from 'node:stream';
import { note, scoreText } from './scoreText.ts';
import { directory, type HandEntry, type Listed, localFile, zipByHand } from './zipByHand.ts';

/** A file nobody should be able to harm the server with. `xml`: its trouble must name a line. */
export interface Hostile {
  name: string;
  make: () => Buffer | Promise<Buffer>;
  code: string;
  xml?: boolean;
}

export const GOOD = scoreText([note('C5', 16)]);
const HEAD = '<?xml version="1.0"?>\n';
const SCORE = 'score.musicxml';
const container = (path: string): HandEntry => ({
  name: 'META-INF/container.xml',
  body: Buffer.from(`<container><rootfiles><rootfile full-path="${path}"/></rootfiles></container>`),
});
const score: HandEntry = { name: SCORE, body: Buffer.from(GOOD), deflate: true };
const archive = (changed: Partial<HandEntry>, ...others: HandEntry[]) => zipByHand([container(changed.listedAs ?? changed.name ?? SCORE), { ...score, ...changed }, ...others]);

/** An archive is a good one with these helpers, so that each hostile one differs from a good one in its hostile trait only. */
export const goodArchive = () => archive({});

async function deflated(megabytes: number, filling: string): Promise<Buffer> {
  const block = Buffer.alloc(1_000_000, filling);
  return buffer(Readable.from(Array.from({ length: megabytes }, () => block)).pipe(createDeflateRaw()));
}

const bomb = async (said: number, megabytes = 400) => archive({ packed: await deflated(megabytes, '\0'), size: said, crc: 0 });

function manyOntoOne(count: number): Buffer {
  const { bytes, packedLength } = localFile(score);
  const listed: Listed[] = Array.from({ length: count }, (_, i) => ({ entry: { ...score, listedAs: `${i}.musicxml` }, packedLength, at: 0 }));
  return Buffer.concat([bytes, directory(listed, bytes.length)]);
}

/** A second file that lies inside the bytes of the first, each with a true name, size and checksum. */
function oneInsideAnother(): Buffer {
  const inner = localFile(score);
  const outer: HandEntry = { name: 'outer.bin', body: inner.bytes };
  const { bytes, packedLength } = localFile(outer);
  const listed = [{ entry: outer, packedLength, at: 0 }, { entry: score, packedLength: inner.packedLength, at: bytes.length - inner.bytes.length }];
  return Buffer.concat([bytes, directory(listed, bytes.length)]);
}

const text = (name: string, code: string, make: () => string): Hostile => ({ name, code, xml: true, make: () => Buffer.from(make()) });
const packed = (name: string, make: Hostile['make'], code = 'BAD_ARCHIVE'): Hostile => ({ name, make, code });
const slip = (path: string) => packed(`a name that leads out of the archive (${path})`, () => archive({ name: path }));
const LAUGHS = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i'];
const definitions = LAUGHS.map((name, i) => `<!ENTITY ${name} "${i ? `&${LAUGHS[i - 1]};`.repeat(10) : 'ha'}">`).join('');

export const HOSTILE_XML: Hostile[] = [
  text('300,000 elements inside each other', 'TOO_BIG', () => `${HEAD}${'<a>'.repeat(300_000)}${'</a>'.repeat(300_000)}`),
  text('a comment of 20 MB', 'TOO_BIG', () => GOOD.replace('<part-list>', `<!--${'x'.repeat(20_000_000)}--><part-list>`)),
  text('an attribute of 20 MB', 'TOO_BIG', () => GOOD.replace('<part-list>', `<part-list id="${'x'.repeat(20_000_000)}">`)),
  text('an entity bomb in its own DOCTYPE', 'OWN_DEFINITIONS', () => GOOD.replace('<score-partwise', `<!DOCTYPE score-partwise [${definitions}]>\n<score-partwise`).replace('Violin', '&i;')),
  text('an entity that reads a file of the server', 'OWN_DEFINITIONS', () => GOOD.replace('<score-partwise', '<!DOCTYPE score-partwise [<!ENTITY x SYSTEM "file:///etc/passwd">]>\n<score-partwise').replace('Violin', '&x;')),
  text('an entity nobody defined', 'NOT_WELL_FORMED', () => GOOD.replace('Violin', '&x;')),
  text('a plain score cut off', 'NOT_WELL_FORMED', () => GOOD.slice(0, -60)),
  text('an end tag of another name', 'NOT_WELL_FORMED', () => GOOD.replace('</step>', '</stop>')),
  text('XML that is no score', 'NOT_A_SCORE', () => `${HEAD}<html><body/></html>`),
];

export const HOSTILE_FILES: Hostile[] = [
  { name: 'nothing at all', code: 'EMPTY', make: () => Buffer.alloc(0) },
  { name: 'a picture', code: 'NOT_MUSICXML', make: () => Buffer.from('\x89PNG\r\n\x1a\n', 'latin1') },
  packed('400 MB of zeros, said truly', () => bomb(400_000_000), 'TOO_BIG'),
  packed('200 MB of zeros, below the cap on size', () => bomb(200_000_000, 200), 'TOO_BIG'),
  packed('400 MB of zeros said to be 1,000 bytes', () => bomb(1_000)),
  packed('500 names for one file', () => manyOntoOne(500)),
  packed('one file inside the bytes of another', oneInsideAnother),
  packed('a size said too small', () => archive({ size: score.body.length - 1 })),
  packed('a size said too great', () => archive({ size: score.body.length + 1 })),
  ...['../score.musicxml', 'a/../../score.musicxml', '/score.musicxml', 'C:/score.musicxml', '..\\score.musicxml', 'C:\\score.musicxml'].map(slip),
  packed('one name twice', () => archive({}, score)),
  packed('one name twice but for capitals', () => archive({}, { ...score, name: 'SCORE.musicxml' })),
  packed('two names for one file', () => archive({ listedAs: 'other.musicxml' })),
  packed('a symbolic link', () => archive({ mode: 0o120777, body: Buffer.from('/etc/passwd') })),
  packed('a file locked with a password', () => archive({ flags: 1 })),
  packed('60,000 tiny files', () => archive({}, ...Array.from({ length: 60_000 }, (_, i) => ({ name: `${i}`, body: Buffer.alloc(0) }))), 'TOO_BIG'),
  packed('an archive cut off', () => archive({}).subarray(0, -40)),
  packed('a wrong checksum', () => archive({ crc: 1 })),
  packed('a container that names a file that is not there', () => zipByHand([container('gone.musicxml'), score]), 'NO_SCORE_INSIDE'),
  packed('a container that is not well-formed', () => zipByHand([{ name: 'META-INF/container.xml', body: Buffer.from('<container>') }, score]), 'BAD_CONTAINER'),
];
