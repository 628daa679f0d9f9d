-- CreateTable
CREATE TABLE "job" (
    "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text),
    "id" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "target" TEXT NOT NULL,
    "order" JSON NOT NULL,
    "progress" JSON NOT NULL,
    "askers" TEXT[],
    "alone" TEXT,
    "state" TEXT NOT NULL DEFAULT 'waiting',
    "stopped" BOOLEAN NOT NULL DEFAULT false,
    "turn" TEXT,
    "outcome" JSON,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "came" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "ended_at" TIMESTAMPTZ(3),

    CONSTRAINT "job_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "job_file" (
    "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text),
    "id" TEXT NOT NULL,
    "job_id" TEXT,
    "made" BOOLEAN NOT NULL,
    "place" INTEGER NOT NULL,
    "page" INTEGER NOT NULL DEFAULT 0,
    "name" TEXT NOT NULL,
    "size" INTEGER NOT NULL DEFAULT 0,
    "notes" JSON,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "job_file_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "job_piece" (
    "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text),
    "file_id" TEXT NOT NULL,
    "place" INTEGER NOT NULL,
    "bytes" BYTEA NOT NULL,

    CONSTRAINT "job_piece_pkey" PRIMARY KEY ("file_id","place")
);

-- CreateIndex
CREATE INDEX "job_ensemble_id_kind_at_idx" ON "job"("ensemble_id", "kind", "at");

-- CreateIndex
CREATE UNIQUE INDEX "job_ensemble_id_id_key" ON "job"("ensemble_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "job_ensemble_id_alone_key" ON "job"("ensemble_id", "alone");

-- CreateIndex
CREATE UNIQUE INDEX "job_file_ensemble_id_id_key" ON "job_file"("ensemble_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "job_file_job_id_made_place_page_key" ON "job_file"("job_id", "made", "place", "page");

-- AddForeignKey
ALTER TABLE "job_file" ADD CONSTRAINT "job_file_ensemble_id_job_id_fkey" FOREIGN KEY ("ensemble_id", "job_id") REFERENCES "job"("ensemble_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "job_piece" ADD CONSTRAINT "job_piece_ensemble_id_file_id_fkey" FOREIGN KEY ("ensemble_id", "file_id") REFERENCES "job_file"("ensemble_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- The line itself: tables of pg-boss 10.4.2 as it makes them (PgBoss.getConstructionPlans), so that whoever serves need not be allowed to make any.
    CREATE SCHEMA IF NOT EXISTS bowline_queue
  ;
    CREATE TYPE bowline_queue.job_state AS ENUM (
      'created',
      'retry',
      'active',
      'completed',
      'cancelled',
      'failed'
    )
  ;
    CREATE TABLE bowline_queue.version (
      version int primary key,
      maintained_on timestamp with time zone,
      cron_on timestamp with time zone,
      monitored_on timestamp with time zone
    )
  ;
    CREATE TABLE bowline_queue.queue (
      name text,
      policy text,
      retry_limit int,
      retry_delay int,
      retry_backoff bool,
      expire_seconds int,
      retention_minutes int,
      dead_letter text REFERENCES bowline_queue.queue (name),
      partition_name text,
      created_on timestamp with time zone not null default now(),
      updated_on timestamp with time zone not null default now(),
      PRIMARY KEY (name)
    )
  ;
    CREATE TABLE bowline_queue.schedule (
      name text REFERENCES bowline_queue.queue ON DELETE CASCADE,
      cron text not null,
      timezone text,
      data jsonb,
      options jsonb,
      created_on timestamp with time zone not null default now(),
      updated_on timestamp with time zone not null default now(),
      PRIMARY KEY (name)
    )
  ;
    CREATE TABLE bowline_queue.subscription (
      event text not null,
      name text not null REFERENCES bowline_queue.queue ON DELETE CASCADE,
      created_on timestamp with time zone not null default now(),
      updated_on timestamp with time zone not null default now(),
      PRIMARY KEY(event, name)
    )
  ;
    CREATE TABLE bowline_queue.job (
      id uuid not null default gen_random_uuid(),
      name text not null,
      priority integer not null default(0),
      data jsonb,
      state bowline_queue.job_state not null default('created'),
      retry_limit integer not null default(2),
      retry_count integer not null default(0),
      retry_delay integer not null default(0),
      retry_backoff boolean not null default false,
      start_after timestamp with time zone not null default now(),
      started_on timestamp with time zone,
      singleton_key text,
      singleton_on timestamp without time zone,
      expire_in interval not null default interval '15 minutes',
      created_on timestamp with time zone not null default now(),
      completed_on timestamp with time zone,
      keep_until timestamp with time zone NOT NULL default now() + interval '14 days',
      output jsonb,
      dead_letter text,
      policy text
    ) PARTITION BY LIST (name)
  ;
ALTER TABLE bowline_queue.job ADD PRIMARY KEY (name, id);
CREATE TABLE bowline_queue.archive (LIKE bowline_queue.job);
ALTER TABLE bowline_queue.archive ADD PRIMARY KEY (name, id);
ALTER TABLE bowline_queue.archive ADD archived_on timestamptz NOT NULL DEFAULT now();
CREATE INDEX archive_i1 ON bowline_queue.archive(archived_on);
    CREATE FUNCTION bowline_queue.create_queue(queue_name text, options json)
    RETURNS VOID AS
    $$
    DECLARE
      table_name varchar := 'j' || encode(sha224(queue_name::bytea), 'hex');
      queue_created_on timestamptz;
    BEGIN
      WITH q as (
      INSERT INTO bowline_queue.queue (
        name,
        policy,
        retry_limit,
        retry_delay,
        retry_backoff,
        expire_seconds,
        retention_minutes,
        dead_letter,
        partition_name
      )
      VALUES (
        queue_name,
        options->>'policy',
        (options->>'retryLimit')::int,
        (options->>'retryDelay')::int,
        (options->>'retryBackoff')::bool,
        (options->>'expireInSeconds')::int,
        (options->>'retentionMinutes')::int,
        options->>'deadLetter',
        table_name
      )
      ON CONFLICT DO NOTHING
      RETURNING created_on
      )
      SELECT created_on into queue_created_on from q;
      IF queue_created_on IS NULL THEN
        RETURN;
      END IF;
      EXECUTE format('CREATE TABLE bowline_queue.%I (LIKE bowline_queue.job INCLUDING DEFAULTS)', table_name);
      EXECUTE format('ALTER TABLE bowline_queue.%1$I ADD PRIMARY KEY (name, id)', table_name);
      EXECUTE format('ALTER TABLE bowline_queue.%1$I ADD CONSTRAINT q_fkey FOREIGN KEY (name) REFERENCES bowline_queue.queue (name) ON DELETE RESTRICT DEFERRABLE INITIALLY DEFERRED', table_name);
      EXECUTE format('ALTER TABLE bowline_queue.%1$I ADD CONSTRAINT dlq_fkey FOREIGN KEY (dead_letter) REFERENCES bowline_queue.queue (name) ON DELETE RESTRICT DEFERRABLE INITIALLY DEFERRED', table_name);
      EXECUTE format('CREATE UNIQUE INDEX %1$s_i1 ON bowline_queue.%1$I (name, COALESCE(singleton_key, '''')) WHERE state = ''created'' AND policy = ''short''', table_name);
      EXECUTE format('CREATE UNIQUE INDEX %1$s_i2 ON bowline_queue.%1$I (name, COALESCE(singleton_key, '''')) WHERE state = ''active'' AND policy = ''singleton''', table_name);
      EXECUTE format('CREATE UNIQUE INDEX %1$s_i3 ON bowline_queue.%1$I (name, state, COALESCE(singleton_key, '''')) WHERE state <= ''active'' AND policy = ''stately''', table_name);
      EXECUTE format('CREATE UNIQUE INDEX %1$s_i4 ON bowline_queue.%1$I (name, singleton_on, COALESCE(singleton_key, '''')) WHERE state <> ''cancelled'' AND singleton_on IS NOT NULL', table_name);
      EXECUTE format('CREATE INDEX %1$s_i5 ON bowline_queue.%1$I (name, start_after) INCLUDE (priority, created_on, id) WHERE state < ''active''', table_name);
      EXECUTE format('ALTER TABLE bowline_queue.%I ADD CONSTRAINT cjc CHECK (name=%L)', table_name, queue_name);
      EXECUTE format('ALTER TABLE bowline_queue.job ATTACH PARTITION bowline_queue.%I FOR VALUES IN (%L)', table_name, queue_name);
    END;
    $$
    LANGUAGE plpgsql;
  ;
    CREATE FUNCTION bowline_queue.delete_queue(queue_name text)
    RETURNS VOID AS
    $$
    DECLARE
      table_name varchar;
    BEGIN
      WITH deleted as (
        DELETE FROM bowline_queue.queue
        WHERE name = queue_name
        RETURNING partition_name
      )
      SELECT partition_name from deleted INTO table_name;
      EXECUTE format('DROP TABLE IF EXISTS bowline_queue.%I', table_name);
    END;
    $$
    LANGUAGE plpgsql;
  ;
INSERT INTO bowline_queue.version(version) VALUES ('24');
SELECT bowline_queue.create_queue('given-up', '{"policy":"standard","retryLimit":1000,"retryDelay":5,"expireInSeconds":7200}');
SELECT bowline_queue.create_queue(kind, '{"policy":"standard","retryLimit":2,"retryDelay":0,"expireInSeconds":7200,"deadLetter":"given-up"}') FROM unnest(ARRAY['import', 'print', 'check']) kind;

-- Whoever serves may work with the line, not change how it is made.
GRANT USAGE ON SCHEMA bowline_queue TO bowline_app;
GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA bowline_queue TO bowline_app;
REVOKE ALL ON FUNCTION bowline_queue.create_queue, bowline_queue.delete_queue FROM PUBLIC;

-- What a job is about, its files and what it makes are seen by its ensemble alone, as everything else is.
DO $$ DECLARE t text; BEGIN
  FOREACH t IN ARRAY ARRAY['job','job_file','job_piece'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', t);
    EXECUTE format('CREATE POLICY own_ensemble ON %I TO bowline_app USING (ensemble_id = current_setting(''bowline.ensemble'', true)) WITH CHECK (ensemble_id = current_setting(''bowline.ensemble'', true))', t);
    EXECUTE format('CREATE POLICY whole ON %I TO %I USING (current_setting(''bowline.whole'', true) = ''on'') WITH CHECK (current_setting(''bowline.whole'', true) = ''on'')', t, current_user);
  END LOOP;
END $$;
