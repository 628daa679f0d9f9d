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
  /** What its trouble must say, so that it is not refused for another reason. */
  says: RegExp;
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

async function deflatedZeros(megabytes: number): Promise<Buffer> {
  const block = Buffer.alloc(1_000_000);
  return buffer(Readable.from(Array.from({ length: megabytes }, () => block)).pipe(createDeflateRaw()));
}

const bomb = async (megabytes: number, said: number) => archive({ packed: await deflatedZeros(megabytes), size: said, crc: 0 });

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

const text = (name: string, code: string, says: RegExp, make: () => string): Hostile => ({ name, code, says, xml: true, make: () => Buffer.from(make()) });
const packed = (name: string, says: RegExp, make: Hostile['make'], code = 'BAD_ARCHIVE'): Hostile => ({ name, says, make, code });
const slip = (path: string, says: RegExp) => packed(`the name ${path}`, says, () => archive({ name: path }));
const LAUGHS = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i'];
const definitions = LAUGHS.map((name, i) => `<!ENTITY ${name} "${i ? `&${LAUGHS[i - 1]};`.repeat(10) : 'ha'}">`).join('');

export const HOSTILE_XML: Hostile[] = [
  text('300,000 elements inside each other', 'TOO_BIG', /nested/, () => `${HEAD}${'<a>'.repeat(300_000)}${'</a>'.repeat(300_000)}`),
  text('a comment of 20 MB', 'TOO_BIG', /text or comment/, () => GOOD.replace('<part-list>', `<!--${'x'.repeat(20_000_000)}--><part-list>`)),
  text('an entity bomb in its own DOCTYPE', 'OWN_DEFINITIONS', /DOCTYPE/, () => GOOD.replace('<score-partwise', `<!DOCTYPE score-partwise [${definitions}]>\n<score-partwise`).replace('Violin', '&i;')),
  text('an entity that reads a file of the server', 'OWN_DEFINITIONS', /DOCTYPE/, () => GOOD.replace('<score-partwise', '<!DOCTYPE score-partwise [<!ENTITY x SYSTEM "file:///etc/passwd">]>\n<score-partwise').replace('Violin', '&x;')),
  text('a plain score cut off', 'NOT_WELL_FORMED', /unclosed/, () => GOOD.slice(0, -60)),
  text('XML that is no score', 'NOT_A_SCORE', /html/, () => `${HEAD}<html><body/></html>`),
];

export const HOSTILE_FILES: Hostile[] = [
  { name: 'nothing at all', code: 'EMPTY', says: /empty/, make: () => Buffer.alloc(0) },
  packed('310 MB of zeros, said truly', /unpack to more/, () => bomb(310, 310_000_000), 'TOO_BIG'),
  packed('310 MB of zeros said to be 1,000 bytes', /longer than the archive says/, () => bomb(310, 1_000)),
  packed('500 names for one file', /two different names/, () => manyOntoOne(500)),
  packed('one file inside the bytes of another', /on top of each other/, oneInsideAnother),
  packed('a size said too small', /longer than the archive says/, () => archive({ size: score.body.length - 1 })),
  slip('../score.musicxml', /relative path/),
  slip('/score.musicxml', /absolute path/),
  slip('..\\score.musicxml', /invalid characters/),
  packed('one name twice', /twice/, () => archive({}, score)),
  packed('a symbolic link', /a link/, () => archive({ mode: 0o120777, body: Buffer.from('/etc/passwd') })),
  packed('a file locked with a password', /password/, () => archive({ flags: 1 })),
  packed('60,000 tiny files', /60002 files/, () => archive({}, ...Array.from({ length: 60_000 }, (_, i) => ({ name: `${i}`, body: Buffer.alloc(0) }))), 'TOO_BIG'),
  packed('an archive cut off', /cannot be opened/, () => archive({}).subarray(0, -40)),
  packed('a wrong checksum', /checksum/, () => archive({ crc: 1 })),
];

/** Near relatives of the above, refused at the same places: these need no worker to be tried. */
export const RELATIVES: Hostile[] = [
  { name: 'a picture', code: 'NOT_MUSICXML', says: /a picture/, make: () => Buffer.from('\x89PNG\r\n\x1a\n', 'latin1') },
  packed('200 MB of zeros, below the cap on size', /unpack to more/, () => bomb(310, 200_000_000), 'TOO_BIG'),
  packed('a size said too great', /not as long/, () => archive({ size: score.body.length + 1 })),
  slip('a/../../score.musicxml', /relative path/),
  slip('C:/score.musicxml', /absolute path/),
  packed('one name twice but for capitals', /twice/, () => archive({}, { ...score, name: 'SCORE.musicxml' })),
  packed('two names for one file', /two different names/, () => archive({ listedAs: 'other.musicxml' })),
  packed('a container that names a file that is not there', /no such file/, () => zipByHand([container('gone.musicxml'), score]), 'NO_SCORE_INSIDE'),
  packed('a container that is not well-formed', /container\.xml/, () => zipByHand([{ name: 'META-INF/container.xml', body: Buffer.from('<container>') }, score]), 'BAD_CONTAINER'),
];
