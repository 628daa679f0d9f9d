import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import { bindMigrationAwareSqlAdapterFactory } from '@prisma/driver-adapter-utils';
import * as engine from '@prisma/schema-engine-wasm/schema_engine_bg';
import { PrismaPGlite } from 'pglite-prisma-adapter';

export const MIGRATIONS = join(import.meta.dirname, 'migrations');
const SCHEMA = join(import.meta.dirname, 'schema.prisma');
const filters = { externalTables: [], externalEnums: [] };

/** SQL that leads from the migrations to the schema; empty when they agree. The shadow database lives in memory. */
export async function difference(): Promise<string> {
  await load();
  const content = readFileSync(SCHEMA, 'utf8');
  const schema = await engine.SchemaEngine.new({ datamodels: [[SCHEMA, content]] }, () => {}, bindMigrationAwareSqlAdapterFactory(new PrismaPGlite(new PGlite())));
  const { exitCode, stdout } = await schema.diff({
    from: { tag: 'migrations', ...migrations() },
    to: { tag: 'schemaDatamodel', files: [{ path: SCHEMA, content }] },
    script: true,
    exitCode: true,
    filters,
  });
  return exitCode === 0 ? '' : (stdout ?? '');
}

function migrations() {
  const names = existsSync(MIGRATIONS) ? readdirSync(MIGRATIONS).filter((name) => existsSync(join(MIGRATIONS, name, 'migration.sql'))).sort() : [];
  return {
    baseDir: MIGRATIONS,
    shadowDbInitScript: '',
    lockfile: { path: 'migration_lock.toml', content: 'provider = "postgresql"\n' },
    migrationDirectories: names.map((path) => ({
      path,
      migrationFile: { path: 'migration.sql', content: { tag: 'ok' as const, value: readFileSync(join(MIGRATIONS, path, 'migration.sql'), 'utf8') } },
    })),
  };
}

async function load(): Promise<void> {
  const file = createRequire(import.meta.url).resolve('@prisma/schema-engine-wasm/schema_engine_bg');
  const { instance } = await WebAssembly.instantiate(readFileSync(join(dirname(file), 'schema_engine_bg.wasm')), { './schema_engine_bg.js': engine as unknown as WebAssembly.ModuleImports });
  engine.__wbg_set_wasm(instance.exports);
  (instance.exports['__wbindgen_start'] as () => void)();
}
