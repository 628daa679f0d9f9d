import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

export default defineConfig({
  root: 'client',
  plugins: [react()],
  build: { outDir: '../dist/client', emptyOutDir: true, target: 'es2022', chunkSizeWarningLimit: 9000 },
  worker: { format: 'es' },
  server: { proxy: { '/api': 'http://localhost:4640', '/socket': { target: 'http://localhost:4640', ws: true } } },
});
