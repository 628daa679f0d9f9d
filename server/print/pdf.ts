import PDFDocument from 'pdfkit';
import SVGtoPDF from 'svg-to-pdfkit';
import type { Paper } from '../../core/print/paper.ts';
import { bytesOf, FACES, isFace } from './faces.ts';

/** Points in a millimetre. */
const POINTS = 72 / 25.4;

export interface PdfFacts {
  title: string;
  author: string;
  subject: string;
  at: Date;
}

/** A PDF written page by page, so that no more than one page is held as drawing. */
export class PdfWriter {
  private readonly document: PDFKit.PDFDocument;
  private readonly chunks: Buffer[] = [];
  private readonly done: Promise<void>;
  private readonly size: [number, number];

  constructor(paper: Paper, { title, author, subject, at }: PdfFacts) {
    this.size = [paper.width * POINTS, paper.height * POINTS];
    this.document = new PDFDocument({ autoFirstPage: false, size: this.size, margin: 0, pdfVersion: '1.7', lang: 'en', info: { Title: title, Author: author, Subject: subject, Creator: 'Bowline', CreationDate: at } });
    this.document.on('data', (chunk: Buffer) => this.chunks.push(chunk));
    this.done = new Promise((resolve, reject) => this.document.on('end', resolve).on('error', reject));
    for (const face of FACES) this.document.registerFont(face, bytesOf(face));
  }

  /** One page from its SVG. */
  page(svg: string): void {
    this.document.addPage({ size: this.size, margin: 0 });
    SVGtoPDF(this.document, svg, 0, 0, {
      width: this.size[0],
      height: this.size[1],
      preserveAspectRatio: 'none',
      assumePt: true,
      // What the engraver sets without a face of ours, like the syllables of a song, is in the plain one.
      fontCallback: (family) => [family.replace(/["']/g, '').split(',')[0]!.trim()].find(isFace) ?? 'Alegreya Sans',
      warningCallback: (warning) => {
        throw new Error(`The page cannot be drawn: ${String(warning)}`);
      },
    });
  }

  async end(): Promise<Buffer> {
    this.document.end();
    await this.done;
    return Buffer.concat(this.chunks);
  }
}
