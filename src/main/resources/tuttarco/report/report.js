'use strict';
(() => {
  const all = (selector, within = document) => [...within.querySelectorAll(selector)];
  const strips = all('.strip');
  const dock = document.getElementById('moment');
  const video = dock.querySelector('video');
  const where = dock.querySelector('.where');
  const still = document.createElement('img');
  still.hidden = true;
  dock.querySelector('.picture').append(still);
  const {video: file, reference} = dock.dataset;
  const button = (name, within = dock) => within.querySelector(`[data-do="${name}"]`);

  // the beats in the order played, with the bar that each lies in
  const beats = [];
  const bars = all('.bar', strips[0]).map((bar, index) => {
    const times = bar.dataset.beats.split(' ').map(Number);
    const first = beats.length;
    times.forEach((at, i) => beats.push({at, bar: index, place: i, of: times.length}));
    return {first, last: beats.length - 1, end: Number(bar.dataset.end)};
  });
  const endOf = beat => (beat === bars[beats[beat].bar].last ? bars[beats[beat].bar].end : beats[beat + 1].at);

  const views = strips.map(strip => {
    const figure = strip.closest('figure');
    const mark = document.createElement('div');
    mark.className = 'chosen';
    return {strip, mark, zoom: 1, bars: all('.bar', strip), tools: figure.querySelector('.tools'), table: figure.querySelector('table')};
  });

  let chosen = -1;
  let stretch = null;
  let again = true;

  function mark(beat) {
    const {bar, place, of} = beats[beat];
    for (const view of views) {
      view.mark.style.left = `${100 * place / of}%`;
      view.mark.style.width = `${100 / of}%`;
      view.bars[bar].append(view.mark);
    }
  }

  function bringIntoView(view) {
    const room = view.strip.getBoundingClientRect();
    const names = view.strip.querySelector('.names').getBoundingClientRect().width;
    const at = view.mark.getBoundingClientRect();
    if (at.left < room.left + names || at.right > room.right) {
      view.strip.scrollLeft += at.left - room.left - names - (room.width - names) / 3;
    }
  }

  /** So that the moment does not cover the strip it was chosen in. */
  function keepClear({strip}) {
    const room = strip.getBoundingClientRect();
    const covered = room.bottom + 8 - dock.getBoundingClientRect().top;
    if (covered > 0) {
      scrollBy(0, Math.min(covered, Math.max(0, room.top - 8)));
    }
  }

  function say(beat) {
    const {table} = views[0];
    const cells = [...table.tBodies[0].rows[beat].cells].map(cell => cell.textContent);
    const headings = [...table.tHead.rows[0].cells].map(cell => cell.textContent);
    const from = headings.indexOf('Time') + 1;
    const who = state => headings.slice(from).filter((_, i) => cells[from + i].split(', ').includes(state));
    where.textContent = headings.slice(0, from).map((heading, i) => `${heading.toLowerCase()} ${cells[i]}`)
      .join(', ').replace(/^./, letter => letter.toUpperCase()).replace(', time ', ' – ');
    const lines = [[`Against ${reference}`, who('against')], ['Unsure', who('unsure')], ['Not seen', who('unseen')]]
      .filter(([, names]) => names.length > 0).map(([state, names]) => `${state}: ${names.join(', ')}`);
    dock.querySelector('ul').replaceChildren(...(lines.length > 0 ? lines : [`Nobody was read as against ${reference}.`]).map(line => {
      const item = document.createElement('li');
      item.textContent = line;
      return item;
    }));
  }

  function show(beat) {
    const picture = document.querySelector(`#moment-${beats[beat].bar} img`);
    still.hidden = !video.hidden || !picture;
    if (picture) {
      still.src = picture.src;
      still.alt = picture.alt;
    }
  }

  /** Shows a beat and goes over its bar, or over the stretch that is given. */
  function choose(beat, over) {
    chosen = Math.max(0, Math.min(beats.length - 1, beat));
    const bar = bars[beats[chosen].bar];
    stretch = over || {from: beats[bar.first].at, to: bar.end};
    dock.hidden = false;
    document.documentElement.style.scrollPaddingBottom = document.body.style.paddingBottom = `${dock.offsetHeight + 16}px`;
    mark(chosen);
    views.forEach(bringIntoView);
    say(chosen);
    show(chosen);
    seek(beats[chosen].at);
  }

  function step(beatsOn) {
    choose(chosen < 0 ? 0 : chosen + beatsOn);
  }

  function stepBar(barsOn) {
    const bar = chosen < 0 ? 0 : beats[chosen].bar + barsOn;
    choose(bars[Math.max(0, Math.min(bars.length - 1, bar))].first);
  }

  // the video beside the page, if there is one

  let wanted = null;

  function seek(at) {
    if (video.readyState === 0) {
      wanted = at;
      if (file && !video.getAttribute('src')) {
        video.src = file;
      }
    } else {
      video.currentTime = at;
    }
  }

  video.addEventListener('loadedmetadata', () => {
    video.hidden = false;
    ['play', 'slow', 'again'].forEach(name => { button(name).hidden = false; });
    show(chosen);
    video.currentTime = wanted;
  });

  function play() {
    if (video.getAttribute('src')) {
      video.play().catch(() => {});
    }
  }

  function follow() {
    const at = video.currentTime;
    if (again && stretch && at >= stretch.to) {
      video.currentTime = stretch.from;
    } else if (!video.paused) {
      const beat = beats.findLastIndex(b => b.at <= at);
      if (beat >= 0 && at < endOf(beat) && beat !== chosen) {
        chosen = beat;
        mark(beat);
        views.forEach(bringIntoView);
        say(beat);
      }
    }
    if (!video.paused) {
      requestAnimationFrame(follow);
    }
  }

  video.addEventListener('play', () => {
    button('play').textContent = 'Stop';
    where.setAttribute('aria-live', 'off');
    requestAnimationFrame(follow);
  });
  video.addEventListener('pause', () => {
    button('play').textContent = 'Play';
    where.setAttribute('aria-live', 'polite');
  });
  video.addEventListener('ended', () => {
    if (again && stretch) {
      video.currentTime = stretch.from;
      play();
    }
  });

  function zoom(view, times) {
    const before = view.zoom;
    const left = view.strip.scrollLeft;
    view.zoom = Math.max(0.5, Math.min(4, before * times));
    view.strip.style.setProperty('--zoom', view.zoom);
    view.strip.scrollLeft = left * view.zoom / before;
  }

  function scrollBars(view, barsOn) {
    const names = view.strip.querySelector('.names').getBoundingClientRect().right;
    const first = view.bars.findIndex(bar => bar.getBoundingClientRect().left > names - 2);
    const to = view.bars[Math.max(0, Math.min(view.bars.length - 1, (first < 0 ? view.bars.length - 1 : first) + barsOn))];
    view.strip.scrollLeft += to.getBoundingClientRect().left - names;
  }

  const deeds = {
    'bar-back': () => stepBar(-1),
    'bar-on': () => stepBar(1),
    'beat-back': () => step(-1),
    'beat-on': () => step(1),
    play: () => (video.paused ? play() : video.pause()),
    slow: pressed => { video.playbackRate = pressed ? 0.5 : 1; },
    again: pressed => { again = pressed; },
    close: () => {
      video.pause();
      dock.hidden = true;
      document.documentElement.style.scrollPaddingBottom = document.body.style.paddingBottom = '';
      views.forEach(view => view.mark.remove());
    },
  };

  function press(element, deed) {
    const toggles = element.hasAttribute('aria-pressed');
    const pressed = toggles && element.getAttribute('aria-pressed') !== 'true';
    if (toggles) {
      element.setAttribute('aria-pressed', pressed);
    }
    deed(pressed);
  }

  all('button', dock).forEach(b => b.addEventListener('click', () => press(b, deeds[b.dataset.do])));

  for (const view of views) {
    const larger = () => zoom(view, 1.25);
    const smaller = () => zoom(view, 0.8);
    view.tools.hidden = false;
    // a short take is shown as large as there is room
    zoom(view, Math.max(1, Math.min(1.5, view.strip.clientWidth / view.strip.firstElementChild.scrollWidth)));
    button('larger', view.tools).addEventListener('click', larger);
    button('smaller', view.tools).addEventListener('click', smaller);
    button('bar-back', view.tools).addEventListener('click', () => scrollBars(view, -1));
    button('bar-on', view.tools).addEventListener('click', () => scrollBars(view, 1));
    const keys = {
      ArrowLeft: () => step(-1), ArrowRight: () => step(1), PageUp: () => stepBar(-1), PageDown: () => stepBar(1),
      Home: () => choose(0), End: () => choose(beats.length - 1), '+': larger, '=': larger, '-': smaller,
      Enter: () => (chosen < 0 ? choose(0) : deeds.play()), Escape: deeds.close,
    };
    view.strip.addEventListener('keydown', event => {
      const deed = !event.ctrlKey && !event.altKey && !event.metaKey && keys[event.key];
      if (deed) {
        event.preventDefault();
        deed();
        if (!dock.hidden) {
          keepClear(view);
        }
      }
    });
    view.bars.forEach((bar, index) => bar.addEventListener('click', event => {
      event.preventDefault();
      const box = bar.getBoundingClientRect();
      const {first, last} = bars[index];
      const place = event.target.closest('a') ? 0 : Math.floor((event.clientX - box.left) / box.width * (last - first + 1));
      choose(Math.max(first, Math.min(last, first + place)));
      view.strip.focus({preventScroll: true});
      keepClear(view);
      play();
    }));
  }

  all('a[data-first]').forEach(link => link.addEventListener('click', event => {
    event.preventDefault();
    const first = Number(link.dataset.first);
    choose(first, {from: beats[first].at, to: endOf(Number(link.dataset.last))});
    play();
  }));

  dock.addEventListener('keydown', event => {
    if (event.key === 'Escape') {
      deeds.close();
    }
  });
})();
