/** What the browser is told for a page that is put on the desk or the home screen: its name, its icon, and that it begins where one was. */
export const INSTALLED_AS = {
  name: 'Bowline',
  short_name: 'Bowline',
  description: 'The section’s bowings and fingerings on the stand.',
  id: '/',
  start_url: '/',
  scope: '/',
  display: 'standalone' as const,
  background_color: '#f9faf7',
  theme_color: '#202a2b',
  icons: [
    { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
    { src: '/icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
    { src: '/icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
    { src: '/icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
  ],
};
