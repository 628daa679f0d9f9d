import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { engraverFile } from './engraverFile.config.ts';

export default defineConfig({
  root: 'client',
  plugins: [
    react(),
    VitePWA({
      strategies: 'injectManifest',
      srcDir: 'offline',
      filename: 'sw.ts',
      injectRegister: false,
      // What the browser is told of an installed page lies in client/public.
      manifest: false,
      injectManifest: {
        globPatterns: ['index.html', '*.{svg,png,webmanifest}', 'assets/*.{js,css,wasm}', 'assets/*-latin-*.woff2'],
        // The engraver is one large file.
        maximumFileSizeToCacheInBytes: 16 * 1024 * 1024,
        dontCacheBustURLsMatching: /^assets\//,
      },
    }),
  ],
  build: { outDir: '../dist/client', emptyOutDir: true, target: 'es2022', chunkSizeWarningLimit: 9000 },
  worker: { format: 'es', plugins: () => [engraverFile()] },
  server: { proxy: { '/api': 'http://localhost:4640', '/socket': { target: 'http://localhost:4640', ws: true } } },
});
