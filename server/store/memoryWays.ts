import { hex, type Entry } from './shelves.ts';
import type { Ways } from './ways.ts';

export function createMemoryWays({ persons, links, ways }: Entry): Ways {
  const { addresses, claims, passwords, identities, errands } = ways;
  const known = (id: string) => persons.get(id)!;
  const own = (person: string) => [...addresses.values()].find((one) => one.person === person);
  const drop = (person: string) => {
    const before = own(person);
    if (before) addresses.delete(before.address);
  };

  return {
    async address(person) {
      const found = own(person);
      return found ? { address: found.address, language: found.language, confirmed: found.confirmed } : null;
    },
    async whoseAddress(address) {
      const found = addresses.get(address);
      return found ? { person: known(found.person), to: { address, language: found.language, confirmed: found.confirmed } } : null;
    },
    async setAddress(person, to, confirmed) {
      const other = addresses.get(to.address);
      if (other && other.person !== person && (other.confirmed || !confirmed)) return false;
      drop(person);
      addresses.set(to.address, { ...to, person, confirmed: confirmed !== null });
      return true;
    },
    async forgetAddress(person) {
      drop(person);
      claims.delete(person);
    },
    async claimAddress(person, tokenHash, to, expires) {
      claims.set(person, { ...to, token: hex(tokenHash), expires });
    },
    async claimed(person, now) {
      const claim = claims.get(person);
      return claim && claim.expires > now ? claim.address : null;
    },
    async takeClaim(person, tokenHash, now) {
      const claim = claims.get(person);
      if (!claim || claim.token !== hex(tokenHash) || claim.expires <= now) return null;
      claims.delete(person);
      return { address: claim.address, language: claim.language };
    },

    password: async (person) => passwords.get(person) ?? null,
    async setPassword(person, hash) {
      if (hash === null) passwords.delete(person);
      else passwords.set(person, hash);
    },

    knowsIdentity: async (person, issuer) => identities.some((one) => one.person === person && one.issuer === issuer),
    async whoseIdentity(issuer, subject) {
      const found = identities.find((one) => one.issuer === issuer && one.subject === subject);
      return found ? known(found.person) : null;
    },
    async bindIdentity(person, issuer, subject) {
      const found = identities.find((one) => one.issuer === issuer && one.subject === subject);
      if (!found) identities.push({ person, issuer, subject });
      return !found || found.person === person;
    },
    async forgetIdentities(person) {
      identities.splice(0, identities.length, ...identities.filter((one) => one.person !== person));
    },
    async beginErrand(tokenHash, errand, expires) {
      errands.set(hex(tokenHash), { ...errand, expires });
    },
    async takeErrand(tokenHash, now) {
      const errand = errands.get(hex(tokenHash));
      errands.delete(hex(tokenHash));
      return errand && errand.expires > now ? { session: errand.session, link: errand.link } : null;
    },

    async invitations(ensemble, now) {
      const open = [...links.values()].filter((link) => link.invitation && link.ensemble === ensemble && !link.used && link.expires > now);
      return open.sort((a, b) => a.expires.getTime() - b.expires.getTime()).map(({ id, person, letter, expires }) => ({ id, person: known(person), address: letter?.address ?? null, until: expires }));
    },
    async withdraw(ensemble, id, now) {
      const link = [...links.values()].find((one) => one.invitation && one.ensemble === ensemble && one.id === id && !one.used && one.expires > now);
      if (link) link.used = true;
      return link !== undefined;
    },
  };
}
