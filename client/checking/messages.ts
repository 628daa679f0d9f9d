import type { CheckInput, Finding, OtherSection } from '../../core/check/finding.ts';
import type { SectionPassage } from '../../core/bowing/sectionBows.ts';
import type { Part } from '../../core/music/part.ts';

export type ToChecker = { kind: 'part'; part: Part } | { kind: 'others'; others: readonly OtherSection[] } | { kind: 'check' | 'picture'; job: number; input: Omit<CheckInput, 'part'> };

export type FromChecker = { kind: 'whys'; whys: Record<string, string> } | { kind: 'found'; job: number; findings: Finding[] } | { kind: 'drawn'; job: number; passages: SectionPassage[] } | { kind: 'failed'; job: number; why: string };
