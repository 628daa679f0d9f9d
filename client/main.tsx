import '@fontsource-variable/besley/wght.css';
import '@fontsource-variable/besley/wght-italic.css';
import '@fontsource/alegreya-sans/400.css';
import '@fontsource/alegreya-sans/400-italic.css';
import '@fontsource/alegreya-sans/500.css';
import '@fontsource/alegreya-sans/700.css';
import './ui/styles/tokens.css';
import './ui/styles/page.css';
import './ui/styles/widgets.css';
import './ui/styles/ledge.css';
import './ui/styles/music.css';
import './ui/styles/stand.css';
import './ui/styles/archive.css';
import './ui/styles/folder.css';
import './ui/styles/programme.css';
import './ui/styles/section.css';
import './ui/styles/pictures.css';
import './ui/styles/rules.css';
import './ui/styles/changed.css';
import './ui/styles/print.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import { warmEngraver } from './engraving/worker.ts';
import { askEarly } from './library/http.ts';
import { finishLeaving } from './library/leave.ts';
import { firstScreenShown } from './offline/firstScreen.ts';
import { keepPage } from './offline/newer.ts';
import { fetchPlace, fetchPlacesOnApproach } from './places.ts';
import { placeOf } from './router.ts';
import { lastAddress } from './ui/remembered.ts';
import { startLight } from './ui/light.ts';
import { startLanguage } from './words/language.ts';

startLight();
// A page that was put on the desk begins here: it goes on where one was.
if (location.pathname === '/last') history.replaceState(null, '', lastAddress() ?? '/shelf');
const place = placeOf(location.pathname, location.search);
fetchPlace(place);
fetchPlacesOnApproach();
if (place.at === 'stand') warmEngraver();
else firstScreenShown();
const left = finishLeaving().then(() => {
  if (place.at === 'stand') for (const path of ['/me', `/parts/${place.part}`, `/parts/${place.part}/engraving`]) askEarly(path);
});
await Promise.all([startLanguage(), left]);
createRoot(document.getElementById('root')!).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
if (import.meta.env.PROD) keepPage();
