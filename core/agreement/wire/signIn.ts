import { z } from 'zod';

/** Languages that the library writes letters in. */
export const LetterLanguage = z.enum(['en', 'de', 'fr', 'it']);
export type LetterLanguage = z.infer<typeof LetterLanguage>;

const Token = z.string().min(20).max(200);
const Address = z.email().max(200);
/** As it is typed: nothing is cut off or changed. What may not be a new one is said where it is set. */
const Password = z.string().min(1).max(1000);

export const SHORTEST_PASSWORD = 12;
export const LONGEST_PASSWORD = 128;

/** POST /api/sign-in: a link that works once. */
export const SignInBody = z.strictObject({ token: Token });
/** POST /api/me/invitations: an invitation taken up by somebody the library knows already. */
export const TakeUpBody = z.strictObject({ token: Token });
/** POST /api/sign-in/password */
export const PasswordSignIn = z.strictObject({ address: Address, password: Password });
/** POST /api/sign-in/letter: a link is wanted by letter. */
export const LetterWanted = z.strictObject({ address: Address });
/** POST /api/sign-in/identity: to the orchestra's own sign-in; with an invitation, that is used when they come back. */
export const IdentityWanted = z.strictObject({ invitation: Token.optional() });

/** GET /api/sign-in: the ways there are besides a link that was handed out. */
export interface WaysIn {
  /** A link can be sent. */
  letter: boolean;
  /** What the orchestra's own sign-in is called; null where there is none. */
  identity: string | null;
}

/** PUT /api/me/address: null forgets it. */
export const AddressBody = z.strictObject({ address: Address.nullable(), language: LetterLanguage });
/** POST /api/me/address/confirm: the token in the letter that went to it. */
export const ConfirmBody = z.strictObject({ token: Token });
/** PUT /api/me/password: null does away with it. */
export const PasswordBody = z.strictObject({ password: Password.nullable() });
/** POST /api/me/proof: the present password, to change how one signs in. */
export const ProofBody = z.strictObject({ password: Password });

/** By which way somebody came in. */
export const WAYS = ['link', 'invitation', 'letter', 'password', 'identity'] as const;
export type Way = (typeof WAYS)[number];

export interface SessionView {
  id: string;
  /** Coarse: "Firefox", "Safari", "other". */
  browser: string;
  device: 'computer' | 'tablet' | 'phone' | 'other';
  way: Way;
  /** ISO times. */
  begun: string;
  used: string;
  /** The one that asks. */
  here: boolean;
}

/** GET /api/me/sign-in: how I sign in, and where I am signed in. */
export interface MySignIn {
  address: { address: string; confirmed: boolean } | null;
  /** A letter went there, and is waited for. */
  claimed: string | null;
  password: boolean;
  /** The orchestra's own sign-in knows me. */
  identity: boolean;
  offers: WaysIn;
  /** The ensemble whose librarian's link opened this sign-in, which reaches no other; null: all of mine. */
  only: string | null;
  /** Whether it can be changed from here. */
  may: boolean;
  /** It was proven lately who I am, so that it can be changed at once. */
  proven: boolean;
  sessions: SessionView[];
}

/** GET /api/invitations: open ones. */
export interface InvitationView {
  id: string;
  person: { id: string; name: string };
  /** Where it went by letter; null where it was handed out. */
  address: string | null;
  /** ISO time from which it is too old. */
  until: string;
}
