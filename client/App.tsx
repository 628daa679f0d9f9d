import { CSPProvider } from '@base-ui/react/csp-provider';
import { Suspense, useEffect, useSyncExternalStore, type ReactNode } from 'react';
import { ArchivePlace, ChangedPlace, FolderPlace, RevisionsPlace, RulesPlace, SectionPlace, StandPlace } from './places.ts';
import { usePlace } from './router.ts';
import { ShelfPlace } from './views/shelf/ShelfPlace.tsx';
import { SignIn } from './views/signIn/SignIn.tsx';
import { languageNow, onLanguage } from './words/language.ts';
import { words } from './words/words.ts';

/** The place one is at, in the language that is spoken; another language draws it anew. */
export function App(): ReactNode {
  const language = useSyncExternalStore(onLanguage, languageNow);
  return (
    <CSPProvider disableStyleElements>
      <Suspense fallback={<main className="pages" />}>
        <PlaceShown key={language} />
      </Suspense>
    </CSPProvider>
  );
}

function PlaceShown(): ReactNode {
  const place = usePlace();
  useEffect(() => {
    document.title = place.at === 'signIn' ? words.name : `${words.places[place.at]} · ${words.name}`;
  }, [place.at]);
  switch (place.at) {
    case 'signIn':
      return <SignIn place={place} />;
    case 'shelf':
      return <ShelfPlace place={place} />;
    case 'folder':
      return <FolderPlace key={place.programme} place={place} />;
    case 'stand':
      return <StandPlace key={place.part} place={place} />;
    case 'section':
      return <SectionPlace key={place.part} place={place} />;
    case 'revisions':
      return <RevisionsPlace key={place.part} place={place} />;
    case 'archive':
      return <ArchivePlace place={place} />;
    case 'changed':
      return <ChangedPlace key={`${place.part} ${place.revision}`} place={place} />;
    case 'rules':
      return <RulesPlace place={place} />;
  }
}
