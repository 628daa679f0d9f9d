import type { Place } from '../router.ts';

type Known = Partial<Record<'shelf' | 'folder' | 'stand' | 'section', Place>>;

const KEY = 'bowline/places';

function read(): Known {
  try {
    return JSON.parse(sessionStorage.getItem(KEY) ?? '{}') as Known;
  } catch {
    return {};
  }
}

/** The places this window has been to, so that each word on the ledge leads back. Stand and Section are two views of the same part. */
export function rememberedPlaces(here: Place): Known {
  const known: Known = { ...read(), shelf: { at: 'shelf' } };
  if (here.at === 'folder') known.folder = here;
  if (here.at === 'stand' || here.at === 'section') {
    const measure = here.at === 'stand' ? here.measure : known.stand?.at === 'stand' && known.stand.part === here.part ? known.stand.measure : null;
    known.stand = { at: 'stand', part: here.part, measure };
    known.section = { at: 'section', part: here.part };
  }
  sessionStorage.setItem(KEY, JSON.stringify(known));
  return known;
}

/** The programme a part lies in, once known. */
export function rememberFolder(programme: string): void {
  sessionStorage.setItem(KEY, JSON.stringify({ ...read(), folder: { at: 'folder', programme } }));
}
