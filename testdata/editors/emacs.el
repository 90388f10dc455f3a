;;; -*- lexical-binding: t -*-
;; The same in Emacs: a plan with a mistake is opened, the mistake is found and mended, a name
;; is gone to and another given, what may stand there and what it means is asked for, the file
;; is laid out and saved. What went wrong ends Emacs with status 1.
(require 'eglot)
(require 'flymake)

(define-derived-mode care-mode prog-mode "Care"
  (setq-local comment-start "# "))
(add-to-list 'auto-mode-alist '("\\.care\\.\\(hcl\\|log\\)\\'" . care-mode))
(add-to-list 'eglot-server-programs
             `(care-mode ,(getenv "VIVARY") "editor" "--now" "2026-11-25T18:00"))
(setq make-backup-files nil create-lockfiles nil eglot-autoshutdown t
      eglot-sync-connect 30 eglot-confirm-server-initiated-edits nil
      project-find-functions (list (lambda (_) (cons 'transient (getenv "HOUSE")))))

(defun vivary-fail (format &rest args)
  (princ (concat "emacs: " (apply #'format format args) "\n") #'external-debugging-output)
  (kill-emacs 1))

(defun vivary-until (what is)
  (let ((tries 0))
    (while (not (funcall is))
      (when (> (setq tries (1+ tries)) 1000) (vivary-fail "%s" what))
      (accept-process-output nil 0.02))))

(defun vivary-at (text behind)
  (goto-char (point-min))
  (unless (search-forward text nil t) (vivary-fail "there is no %s" text))
  (goto-char (+ (match-beginning 0) behind)))

(defun vivary-errors ()
  (seq-filter (lambda (d) (string-match-p "did you mean every" (flymake-diagnostic-text d)))
              (flymake-diagnostics)))

(find-file (getenv "PLAN"))
(apply #'eglot--connect (eglot--guess-contact))
(vivary-until "eglot does not manage the file" (lambda () (eglot-current-server)))
(unless eglot--managed-mode (eglot--maybe-activate-editing-mode))
(flymake-mode 1)
(vivary-until "the mistake is not found" (lambda () (flymake-start) (vivary-errors)))

;; The mistake, mended by the action that is preferred.
(let* ((d (car (vivary-errors)))
       (actions (progn (goto-char (flymake-diagnostic-beg d))
                       (eglot-code-actions (point) (flymake-diagnostic-end d) "quickfix")))
       (edit (plist-get (seq-first actions) :edit)))
  (eglot--apply-workspace-edit edit))
;; In batch nobody is idle, and changes are sent when somebody is.
(eglot--signal-textDocument/didChange)
(vivary-until "the mistake is shown still" (lambda () (flymake-start) (null (vivary-errors))))

;; A name is gone to, and another is given.
(vivary-at "room    = \"east\"" 11)
(let ((to (xref-backend-definitions 'eglot (xref-backend-identifier-at-point 'eglot))))
  (unless (and to (string-match-p "rooms.care.hcl" (format "%s" (xref-item-location (car to)))))
    (vivary-fail "the room is not found: %s" to)))
(vivary-at "enclosure \"burrow-a\"" 12)
(eglot-rename "burrow-one")

;; What may stand there, and what it means.
(when (eglot--server-capable :completionProvider)
  (vivary-at "substrate " 0)
  (beginning-of-line)
  (open-line 1)
  (insert "    de")
  (eglot--signal-textDocument/didChange)
  (let* ((found (eglot-completion-at-point))
         (all (all-completions "" (nth 2 found))))
    (unless (seq-some (lambda (c) (equal (substring-no-properties c) "dish_depth")) all)
      (vivary-fail "nothing of a housing is offered: %s" all)))
  (delete-region (line-beginning-position) (1+ (line-end-position)))
  (eglot--signal-textDocument/didChange))
(when (eglot--server-capable :hoverProvider)
  (vivary-at "substrate " 2)
  (let ((said (jsonrpc-request (eglot-current-server) :textDocument/hover (eglot--TextDocumentPositionParams))))
    (unless (string-match-p "ubstrate" (format "%s" said)) (vivary-fail "the substrate is not explained: %s" said))))
(when (eglot--server-capable :documentFormattingProvider)
  (eglot-format-buffer))
(save-some-buffers t)
(kill-emacs 0)
