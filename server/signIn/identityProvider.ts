import { createHmac } from 'node:crypto';
import * as client from 'openid-client';

/** Who somebody is at a provider. Neither is ever given to another person there. */
export interface Identity {
  issuer: string;
  subject: string;
}

/** The orchestra's own sign-in, by OpenID Connect. */
export interface IdentityProvider {
  /** What people call it. */
  name: string;
  issuer: string;
  /** Where the browser goes. `secret`: kept by that browser alone until it is back; everything that the two ends compare is made from it. `back`: our address for the way back. */
  begin(secret: string, back: string): Promise<string>;
  /** Who came back, by the whole address they came back to. Rejects where anything about it does not hold. */
  finish(secret: string, cameTo: URL): Promise<Identity>;
}

export interface ProviderSettings {
  issuer: string;
  clientId: string;
  clientSecret: string;
  name: string;
}

/** How long the provider may take to answer, in seconds. Chosen, not measured. */
const PATIENCE = 10;

/** Values that prove that beginning and end belong together, each of its own kind. */
const from = (secret: string, kind: 'state' | 'nonce' | 'verifier'): string => createHmac('sha256', secret).update(kind).digest('base64url');

/** The provider is asked for its own description with the first sign-in, so that the library starts without it. */
export function openProvider({ issuer, clientId, clientSecret, name }: ProviderSettings): IdentityProvider {
  let known: Promise<client.Configuration> | undefined;

  function described(): Promise<client.Configuration> {
    const server = new URL(issuer);
    // Settings let plain http through for this machine alone.
    const execute = server.protocol === 'http:' ? [client.allowInsecureRequests] : [];
    known ??= client.discovery(server, clientId, clientSecret, undefined, { execute, timeout: PATIENCE }).catch((reason: unknown) => {
      known = undefined;
      throw reason;
    });
    return known;
  }

  return {
    name,
    issuer,
    async begin(secret, back) {
      const configuration = await described();
      const challenge = await client.calculatePKCECodeChallenge(from(secret, 'verifier'));
      const asked = { redirect_uri: back, scope: 'openid', state: from(secret, 'state'), nonce: from(secret, 'nonce'), code_challenge: challenge, code_challenge_method: 'S256' };
      return client.buildAuthorizationUrl(configuration, asked).href;
    },
    async finish(secret, cameTo) {
      const tokens = await client.authorizationCodeGrant(await described(), cameTo, {
        expectedState: from(secret, 'state'),
        expectedNonce: from(secret, 'nonce'),
        pkceCodeVerifier: from(secret, 'verifier'),
        idTokenExpected: true,
      });
      const { iss, sub } = tokens.claims()!;
      return { issuer: iss, subject: sub };
    },
  };
}
