import type { ReactNode } from 'react';
import { usePlace } from './router.ts';
import { ShelfPlace } from './views/shelf/ShelfPlace.tsx';
import { SignIn } from './views/signIn/SignIn.tsx';
import { StandPlace } from './views/stand/StandPlace.tsx';

/** The place one is at. */
export function App(): ReactNode {
  const place = usePlace();
  switch (place.at) {
    case 'signIn':
      return <SignIn token={place.token} />;
    case 'stand':
      return <StandPlace key={place.part} place={place} />;
    default:
      return <ShelfPlace place={place} />;
  }
}
