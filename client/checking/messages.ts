import type { CheckInput, Finding } from '../../core/check/finding.ts';
import type { SectionPassage } from '../../core/bowing/sectionBows.ts';
import type { Part } from '../../core/music/part.ts';
import type { SentSection } from './othersSent.ts';

export type ToChecker = { kind: 'part'; part: Part } | { kind: 'others'; others: readonly SentSection[] } | { kind: 'check' | 'picture'; job: number; input: Omit<CheckInput, 'part'> };

export type FromChecker = { kind: 'whys'; whys: Record<string, string> } | { kind: 'found'; job: number; findings: Finding[] } | { kind: 'drawn'; job: number; passages: SectionPassage[] } | { kind: 'failed'; job: number; why: string };
