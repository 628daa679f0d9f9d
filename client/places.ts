import { lazy } from 'react';
import { placeOf, type Place } from './router.ts';

/** Each place but the Shelf and the door is fetched by who goes there: a first screen needs one. */
const FETCHED = {
  folder: () => import('./views/folder/FolderPlace.tsx'),
  stand: () => import('./views/stand/StandPlace.tsx'),
  section: () => import('./views/section/SectionPlace.tsx'),
  revisions: () => import('./views/revisions/RevisionsPlace.tsx'),
  archive: () => import('./views/archive/ArchivePlace.tsx'),
  changed: () => import('./views/changed/ChangedPlace.tsx'),
  rules: () => import('./views/rules/RulesPlace.tsx'),
};

export const FolderPlace = lazy(async () => ({ default: (await FETCHED.folder()).FolderPlace }));
export const StandPlace = lazy(async () => ({ default: (await FETCHED.stand()).StandPlace }));
export const SectionPlace = lazy(async () => ({ default: (await FETCHED.section()).SectionPlace }));
export const RevisionsPlace = lazy(async () => ({ default: (await FETCHED.revisions()).RevisionsPlace }));
export const ArchivePlace = lazy(async () => ({ default: (await FETCHED.archive()).ArchivePlace }));
export const ChangedPlace = lazy(async () => ({ default: (await FETCHED.changed()).ChangedPlace }));
export const RulesPlace = lazy(async () => ({ default: (await FETCHED.rules()).RulesPlace }));

/** Fetches what a place is shown with, before it is gone to. Without a line it is asked for again on going there. */
export function fetchPlace({ at }: Place): void {
  if (at in FETCHED) void FETCHED[at as keyof typeof FETCHED]().catch(() => undefined);
}

/** From now on a place is fetched as soon as a pointer or the focus comes to a link to it. */
export function fetchPlacesOnApproach(): void {
  const approached = ({ target }: Event) => {
    const link = target instanceof Element ? target.closest<HTMLAnchorElement>('a[href]') : null;
    if (link?.origin === location.origin) fetchPlace(placeOf(link.pathname, link.search));
  };
  for (const kind of ['pointerover', 'pointerdown', 'focusin']) addEventListener(kind, approached, { passive: true });
}
