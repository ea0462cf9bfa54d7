// Makes a card of this service live where scripts are allowed; without it the frame within stays what it is.
//   <cone-service><iframe src="…/cards/convert" title="Converter"></iframe></cone-service>
//   <script src="…/embed/cone-service.js" defer></script>
// The card takes the place of its frame and answers while one types. <cone-service frame> keeps the frame and gives it its height.
(() => {
  const service = new URL('..', document.currentScript.src).href;
  const cards = service + 'cards/';
  const wait = 350; // ms after the last key

  // The style of a card, within an element of any width: sizes and widths that were those of a page are those of the element.
  const fit = (css) => css
    .replace(/:root/g, ':host').replace(/(^|[\s},])body(?=[{,])/g, '$1.card')
    .replace(/@media screen and \(max-width:30rem\)/g, '@container (max-width:30rem)')
    .replace(/([\d.]*\d)rem\b/g, (_, n) => n * 16 + 'px')
    + ':host{display:block}.box{container-type:inline-size}.card{margin:0;max-width:none}'
    + '.measured{position:absolute;visibility:hidden;height:0;overflow:hidden}'
    + '.status{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}';

  class ConeService extends HTMLElement {
    #asked = 0;
    #timer = 0;

    connectedCallback() {
      if (document.readyState === 'loading') addEventListener('DOMContentLoaded', () => this.#start(), { once: true });
      else this.#start();
    }

    #start() {
      const frame = this.querySelector('iframe');
      const address = frame?.src ?? (this.getAttribute('card') && cards + this.getAttribute('card'));
      if (this.shadowRoot || !address?.startsWith(cards)) return;
      this.attachShadow({ mode: 'open' }).innerHTML = '<slot></slot><div class="box"><div class="card"></div></div><p class="status" role="status"></p>';
      const [slot, box, status] = this.shadowRoot.children;
      const card = box.firstChild;
      Object.assign(this, { slotted: slot, box, card, status, kept: frame && this.hasAttribute('frame') ? frame : null });
      if (this.kept) {
        box.className += ' measured';
        box.inert = true;
        box.ariaHidden = 'true';
        new ResizeObserver(() => this.#measure()).observe(frame);
      } else {
        card.addEventListener('submit', (e) => { e.preventDefault(); this.#ask(e.target); });
        card.addEventListener('input', (e) => {
          clearTimeout(this.#timer);
          // The field is forgotten once the event is over: to the page it is this element.
          const { form } = e.target;
          this.#timer = setTimeout(() => this.#ask(form), wait);
        });
        card.addEventListener('click', (e) => {
          const link = e.target.closest('a');
          if (!link?.href.startsWith(cards) || link.target || e.ctrlKey || e.metaKey || e.shiftKey) return;
          e.preventDefault();
          this.#load(link.href);
        });
      }
      this.#load(address);
    }

    #ask(form) {
      this.#load(form.action + '?' + new URLSearchParams(new FormData(form)));
    }

    // The answer to what was asked last; where there is none, what is shown stays.
    async #load(address) {
      const asked = ++this.#asked;
      let text;
      try {
        const answer = await fetch(address, { headers: { Accept: 'text/html' } });
        text = answer.headers.get('content-type')?.startsWith('text/html') && await answer.text();
      } catch { return; }
      if (text && asked === this.#asked) this.#show(new DOMParser().parseFromString(text, 'text/html'), address);
    }

    #show(page, address) {
      if (!page.querySelector('meta[name="cone-service:height"]')) return;
      const style = new CSSStyleSheet();
      style.replaceSync(fit([...page.querySelectorAll('style')].map((s) => s.textContent).join('')));
      for (const e of page.querySelectorAll('script')) e.remove();
      for (const [name, selector] of [['href', 'a'], ['action', 'form'], ['src', 'img']]) {
        for (const e of page.querySelectorAll(selector)) e.setAttribute(name, new URL(e.getAttribute(name), address).href);
      }
      const at = this.shadowRoot.activeElement;
      const [from, to] = [at?.selectionStart, at?.selectionEnd];
      // Neither a heading of the first level nor a landmark within the page that shows it.
      const parts = [...page.body.children].map((e) => {
        const part = document.createElement('div');
        part.append(...e.childNodes);
        return part;
      });
      const heading = parts[0]?.querySelector('h1');
      if (heading) Object.assign(heading, { role: 'heading', ariaLevel: this.getAttribute('level') ?? '3' });
      this.shadowRoot.adoptedStyleSheets = [style];
      this.card.replaceChildren(...parts);
      if (this.kept) { this.#measure(); return; }
      this.slotted.hidden = true;
      const again = at?.id && this.shadowRoot.getElementById(at.id);
      if (again) {
        // What was typed meanwhile stays.
        if (at.value !== again.value && again.localName === 'input') again.value = at.value;
        again.focus();
        if (from != null) again.setSelectionRange?.(from, to);
        this.status.textContent = this.card.querySelector('.wrong, .lead')?.textContent ?? heading?.textContent ?? '';
      }
      this.dispatchEvent(new CustomEvent('cone-service', { bubbles: true, detail: { address } }));
    }

    #measure() {
      if (!this.card.firstChild) return;
      this.box.style.width = this.kept.clientWidth + 'px';
      this.kept.style.height = Math.ceil(this.card.scrollHeight) + 'px';
    }
  }

  if (!customElements.get('cone-service')) customElements.define('cone-service', ConeService);
})();
