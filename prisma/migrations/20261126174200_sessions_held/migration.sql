-- A batch that goes by a sign-in holds it, shared, until it has committed; who ends the sign-in waits for that. So nothing of somebody who was signed out is
-- committed after the signing out. An advisory lock, since the role that writes the log may not lock rows of sessions.
CREATE FUNCTION "session_key"("id" TEXT) RETURNS BIGINT LANGUAGE sql IMMUTABLE AS $$ SELECT hashtextextended("id", 4640) $$;

CREATE FUNCTION "end_session_alone"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_advisory_xact_lock(session_key(OLD."id"));
  RETURN COALESCE(NEW, OLD);
END $$;

CREATE TRIGGER "session_ends_alone" BEFORE UPDATE OF "revoked_at" ON "session" FOR EACH ROW WHEN (OLD."revoked_at" IS DISTINCT FROM NEW."revoked_at") EXECUTE FUNCTION "end_session_alone"();
CREATE TRIGGER "session_goes_alone" BEFORE DELETE ON "session" FOR EACH ROW EXECUTE FUNCTION "end_session_alone"();
