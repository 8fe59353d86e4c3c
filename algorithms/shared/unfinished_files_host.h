// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>

namespace brushline {

//! A name, without the folder, for what is being written and not yet whole: ".brushline-" and the rest. Hidden, so that
//! nobody takes it for a result.
QString unfinishedName(const QString &rest);
//! The path of a file under such a name in a folder, that no other run uses. \param ending without its dot.
QString unfinishedFile(const QString &folder, const QString &ending);

//! Removes from a folder what runs that were killed left there under such names. Only what nobody has written to for a
//! day: another run may be at work in the same folder.
void removeUnfinished(const QString &folder);

//! Gives a file another name, in the place of an older one of that name, in one step. \returns what went wrong; empty:
//! nothing.
QString moveOver(const QString &from, const QString &to);

//! Keeps a file under a second name, in another folder of the same disk, whatever becomes of the first: linked, or
//! copied where the file system has no links. \returns whether it is kept.
bool keepAs(const QString &path, const QString &kept);

} // namespace brushline
