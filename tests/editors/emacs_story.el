;;; Plays the story in Emacs with eglot and writes the report.  Runs with `emacs -Q --batch'.  -*- lexical-binding: t -*-
(require 'json)
(require 'eglot)
(require 'flymake)
(require 'wye-mode)

(setq eglot-sync-connect 40
      make-backup-files nil
      create-lockfiles nil
      eglot-confirm-server-edits nil)

(defvar report nil)

(defun told (key value) (push (cons key value) report))

(defun wait (what condition)
  "Wait for CONDITION; no idle timer runs in batch, so changes are sent here."
  (let ((end (+ (float-time) 40)) done)
    (while (and (not (setq done (funcall condition))) (< (float-time) end))
      (accept-process-output nil 0.05)
      (when (eglot-managed-p) (eglot--signal-textDocument/didChange)))
    (or done (error "Waited in vain for %s" what))))

(defun errors ()
  (seq-filter (lambda (d) (memq (flymake-diagnostic-type d) '(eglot-error :error))) (flymake-diagnostics)))

(defun messages () (vconcat (mapcar #'flymake-diagnostic-text (errors))))

(defun go (word)
  (search-forward word)
  (goto-char (match-beginning 0)))

(defun play ()
  (find-file (getenv "STORY_FILE"))
  (unless (eq major-mode 'wye-mode) (error "Mode is %s" major-mode))
  (call-interactively #'eglot)
  (wait "the server" #'eglot-managed-p)
  (flymake-start)
  (wait "the finding" #'errors)
  (told 'before (messages))
  (let ((d (car (errors))))
    (told 'marked (buffer-substring-no-properties (flymake-diagnostic-beg d) (flymake-diagnostic-end d)))

    (goto-char (point-min))
    (go "switchboard")
    (go (getenv "STORY_BOARD"))
    (let (hover)
      (eglot-hover-eldoc-function (lambda (text &rest _) (setq hover text)))
      (told 'hover (substring-no-properties (wait "the hover" (lambda () hover)))))

    (goto-char (flymake-diagnostic-beg d))
    (let ((actions (eglot-code-actions (flymake-diagnostic-beg d) (flymake-diagnostic-end d) "quickfix")))
      (told 'offered (vconcat (mapcar (lambda (a) (plist-get a :title)) actions)))
      (eglot-execute (eglot-current-server) (car actions))))
  (wait "the fix" (lambda () (save-excursion (goto-char (point-min)) (re-search-forward "^transformer" nil t))))
  (wait "the end of the finding" (lambda () (null (errors))))
  (told 'after (messages))

  (goto-char (point-min))
  (go "panel")
  (go (getenv "STORY_PANEL"))
  (eglot-rename (getenv "STORY_NEW_PANEL"))
  (save-some-buffers t))

(let ((failed nil))
  (condition-case problem
      (play)
    (error
     (setq failed t)
     (message "FAILED: %S\n%S\n%s" problem (flymake-diagnostics) (buffer-string))
     (when (eglot-current-server)
       (with-current-buffer (jsonrpc-events-buffer (eglot-current-server))
         (message "%s" (buffer-substring (max (point-min) (- (point-max) 3000)) (point-max)))))))
  (let ((coding-system-for-write 'utf-8-unix))
    (with-temp-file (getenv "STORY_REPORT") (insert (json-encode report))))
  (when (eglot-current-server) (ignore-errors (eglot-shutdown (eglot-current-server))))
  (kill-emacs (if failed 1 0)))
