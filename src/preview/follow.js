// Waits until the site has changed, and asks for this page again.
(function () {
  var seen = Number(document.currentScript.dataset.seen);
  function wait() {
    fetch("/-preview/next?after=" + seen, { cache: "no-store" })
      .then(function (answer) { return answer.json(); })
      .then(function (now) {
        if (now.changes === seen) { wait(); } else { location.reload(); }
      })
      .catch(function () { setTimeout(wait, 500); });
  }
  wait();
})();
