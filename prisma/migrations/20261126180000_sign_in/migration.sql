-- AlterTable
ALTER TABLE "session" ADD COLUMN     "browser" TEXT NOT NULL DEFAULT 'other',
ADD COLUMN     "device" TEXT NOT NULL DEFAULT 'other',
ADD COLUMN     "proven_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
ADD COLUMN     "used_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
ADD COLUMN     "way" TEXT NOT NULL DEFAULT 'link';

-- AlterTable
ALTER TABLE "sign_in_link" ADD COLUMN     "address" TEXT,
ADD COLUMN     "id" TEXT NOT NULL DEFAULT (gen_random_uuid())::text,
ADD COLUMN     "invitation" BOOLEAN NOT NULL DEFAULT false,
ADD COLUMN     "language" TEXT;

-- CreateTable
CREATE TABLE "address" (
    "address" TEXT NOT NULL,
    "person_id" TEXT NOT NULL,
    "language" TEXT NOT NULL,
    "confirmed_at" TIMESTAMPTZ(3),

    CONSTRAINT "address_pkey" PRIMARY KEY ("address")
);

-- CreateTable
CREATE TABLE "address_claim" (
    "person_id" TEXT NOT NULL,
    "token_hash" BYTEA NOT NULL,
    "address" TEXT NOT NULL,
    "language" TEXT NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "address_claim_pkey" PRIMARY KEY ("person_id")
);

-- CreateTable
CREATE TABLE "password" (
    "person_id" TEXT NOT NULL,
    "hash" TEXT NOT NULL,
    "set_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "password_pkey" PRIMARY KEY ("person_id")
);

-- CreateTable
CREATE TABLE "identity" (
    "issuer" TEXT NOT NULL,
    "subject" TEXT NOT NULL,
    "person_id" TEXT NOT NULL,
    "bound_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "identity_pkey" PRIMARY KEY ("issuer","subject")
);

-- CreateTable
CREATE TABLE "identity_errand" (
    "token_hash" BYTEA NOT NULL,
    "session_id" TEXT,
    "link" BYTEA,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "identity_errand_pkey" PRIMARY KEY ("token_hash")
);

-- CreateTable
CREATE TABLE "attempt" (
    "key" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "until" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "attempt_pkey" PRIMARY KEY ("key")
);

-- CreateIndex
CREATE UNIQUE INDEX "address_person_id_key" ON "address"("person_id");

-- CreateIndex
CREATE UNIQUE INDEX "address_claim_token_hash_key" ON "address_claim"("token_hash");

-- CreateIndex
CREATE INDEX "identity_person_id_idx" ON "identity"("person_id");

-- CreateIndex
CREATE INDEX "attempt_until_idx" ON "attempt"("until");

-- CreateIndex
CREATE UNIQUE INDEX "sign_in_link_id_key" ON "sign_in_link"("id");

-- AddForeignKey
ALTER TABLE "address" ADD CONSTRAINT "address_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "address_claim" ADD CONSTRAINT "address_claim_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "password" ADD CONSTRAINT "password_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "identity" ADD CONSTRAINT "identity_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- Who is signed in already proved who they are when they came.
UPDATE "session" SET "used_at" = "created_at", "proven_at" = "created_at";

-- Row-level security. How people come in is the door's business alone; a password is shown to it for one person at a time.
DO $$ DECLARE t text; BEGIN
  FOREACH t IN ARRAY ARRAY['address','address_claim','identity','identity_errand','attempt'] LOOP
    EXECUTE format('CREATE POLICY door ON %I TO bowline_door USING (true) WITH CHECK (true)', t);
  END LOOP;
  FOREACH t IN ARRAY ARRAY['address','address_claim','password','identity','identity_errand','attempt'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', t);
    EXECUTE format('CREATE POLICY whole ON %I TO %I USING (current_setting(''bowline.whole'', true) = ''on'') WITH CHECK (current_setting(''bowline.whole'', true) = ''on'')', t, current_user);
  END LOOP;
END $$;
CREATE POLICY owner ON "password" TO bowline_door USING ("person_id" = current_setting('bowline.person', true)) WITH CHECK ("person_id" = current_setting('bowline.person', true));
