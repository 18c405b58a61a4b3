${section.number} ${section.title}<#if job.note?has_content>. ${job.note}</#if>

<#if paged>sheet ${page} of ${pages}</#if>
