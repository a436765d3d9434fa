// Who may come in. For a server on 127.0.0.1: any program and any web page on the same computer can reach its port,
// so the port alone protects nothing.
import { randomBytes, timingSafeEqual } from 'node:crypto';

/**
 * A gate for the given host (name and port): its own host name only, an address that works once and is swapped for a
 * cookie, and no writing from another origin.
 */
export function makeGate(host) {
    // Cookies are shared by all ports of 127.0.0.1, hence a name of its own.
    const cookieName = `rigwright-${randomBytes(4).toString('hex')}`;
    const secret = randomBytes(16).toString('hex');
    const unused = new Set();

    /** A new address. It is used up by its first visit, so a list of processes that shows it is of no use later. */
    function address() {
        const token = randomBytes(16).toString('hex');
        unused.add(token);
        return `http://${host}/?token=${token}`;
    }

    /** Nothing where the request may come in; otherwise what to answer. */
    function refuse(request) {
        // Another name that points here: a web page of somebody else, let in by a trick with name servers.
        if (request.headers.host !== host) return { status: 403, text: 'unknown host name' };

        const url = new URL(request.url, `http://${host}`);
        const token = url.searchParams.get('token');
        if (url.pathname === '/' && token && take(token)) {
            url.searchParams.delete('token');
            return {
                status: 302,
                text: '',
                headers: {
                    location: url.pathname + url.search,
                    'set-cookie': `${cookieName}=${secret}; HttpOnly; SameSite=Strict; Path=/`,
                },
            };
        }
        if (!equal(cookie(request.headers.cookie), secret)) {
            return { status: 403, text: 'This address has been used. Press Enter in the terminal for a new one.' };
        }
        const writes = request.method !== 'GET' && request.method !== 'HEAD';
        if ((writes || request.headers.upgrade) && request.headers.origin !== `http://${host}`) {
            return { status: 403, text: 'wrong origin' };
        }
        return undefined;
    }

    function take(token) {
        const found = [...unused].find(one => equal(one, token));
        return found !== undefined && unused.delete(found);
    }

    function cookie(header) {
        const own = header?.split(/; */).find(part => part.startsWith(`${cookieName}=`));
        return own?.slice(cookieName.length + 1);
    }

    return { address, refuse };
}

function equal(a, b) {
    return typeof a === 'string' && typeof b === 'string' && a.length === b.length && timingSafeEqual(Buffer.from(a), Buffer.from(b));
}
