import type { ImportView } from '../../core/agreement/wire/imports.ts';
import { getJson, remove, sendFiles } from './http.ts';

/** Begins laying a new work out of its files. */
export const layWork = (programme: string, files: readonly File[]) => sendFiles<ImportView>(`/programmes/${programme}/works`, files);
export const addToWork = (work: string, files: readonly File[]) => sendFiles<ImportView>(`/works/${work}/files`, files);
export const correctScore = (work: string, file: File) => sendFiles<ImportView>(`/works/${work}/editions`, [file]);
export const fetchImports = () => getJson<ImportView[]>('/imports');
/** Stops an import that is under way, or puts away one that has ended. */
export const leaveImport = (id: string) => remove(`/imports/${id}`);
