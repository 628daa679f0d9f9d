import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import Provider, { type KoaContextWithOIDC } from 'oidc-provider';

export const CLIENT = { clientId: 'bowline', clientSecret: 'a-secret-of-the-two-ends-alone' };

/** A real OpenID Connect provider on this machine, where whoever is named in `who` signs in without being asked. */
export class TestProvider {
  readonly issuer: string;
  who = 'somebody';
  #server: Server;

  private constructor(server: Server, issuer: string, back: string) {
    this.#server = server;
    this.issuer = issuer;
    const provider: Provider = new Provider(issuer, {
      clients: [{ client_id: CLIENT.clientId, client_secret: CLIENT.clientSecret, redirect_uris: [back], grant_types: ['authorization_code'], response_types: ['code'] }],
      pkce: { required: () => true },
      features: { devInteractions: { enabled: false } },
      cookies: { keys: ['a key of the test'] },
      interactions: { url: (_, { uid }) => `/interaction/${uid}` },
      findAccount: (_, sub) => ({ accountId: sub, claims: async () => ({ sub }) }),
      async loadExistingGrant(ctx: KoaContextWithOIDC) {
        const grant = new provider.Grant({ clientId: ctx.oidc.client!.clientId, accountId: ctx.oidc.session!.accountId! });
        grant.addOIDCScope('openid');
        await grant.save();
        return grant;
      },
    });
    const answer = provider.callback();
    server.on('request', (request, response) => {
      if (request.url!.startsWith('/interaction/')) void provider.interactionFinished(request, response, { login: { accountId: this.who } });
      else void answer(request, response);
    });
  }

  /** `back`: the one address that people are sent back to. */
  static async open(back: string): Promise<TestProvider> {
    const server = createServer();
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    return new TestProvider(server, `http://127.0.0.1:${(server.address() as AddressInfo).port}`, back);
  }

  /** What a browser does there: follows every step, keeps the provider's cookies, and gives the address on our side that it is sent back to. */
  async visit(go: string): Promise<URL> {
    const jar = new Map<string, string>();
    let at = new URL(go);
    while (at.origin === this.issuer) {
      const answer = await fetch(at, { redirect: 'manual', headers: { cookie: [...jar].map(([name, value]) => `${name}=${value}`).join('; ') } });
      for (const one of answer.headers.getSetCookie()) {
        const [name = '', value = ''] = one.split(';')[0]!.split('=');
        jar.set(name, value);
      }
      const next = answer.headers.get('location');
      if (!next) throw new Error(`The provider goes no further: ${answer.status} ${await answer.text()}`);
      at = new URL(next, at);
    }
    return at;
  }

  close(): Promise<void> {
    return new Promise((resolve) => {
      this.#server.close(() => resolve());
      this.#server.closeAllConnections();
    });
  }
}
